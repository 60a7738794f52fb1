using FeltNest.Die;
using FeltNest.Die.Bend;
using FeltNest.Die.Stock;
using FeltNest.Files.Json;
using static FeltNest.Files.Dies.DieRuleFields;

namespace FeltNest.Files.Dies;

/// <summary>Writes the pieces of rule of a die into its file.</summary>
internal static class StripWriter
{
    /// <summary>One piece.</summary>
    public static void Strip(JsonOutput json, RuleStrip strip) => json
        .Number(StripFields.Panel, strip.Part)
        .Number(StripFields.Number, strip.Number)
        .Number(StripFields.Count, strip.Count)
        .Number(StripFields.MiddleMm, strip.MiddleMm)
        .Number(StripFields.BlankMm, strip.BlankMm)
        .Number(StripFields.StartMitreDeg, strip.StartMitreDeg)
        .Number(StripFields.EndMitreDeg, strip.EndMitreDeg)
        .Objects(StripFields.Bends, strip.Bends, (item, bend) => item
            .Number(BendFields.FromMm, bend.FromMm)
            .Number(BendFields.ToMm, bend.ToMm)
            .Number(BendFields.TurnDeg, bend.TurnDeg)
            .Number(BendFields.InsideRadiusMm, bend.InsideRadiusMm)
            .Number(BendFields.NeutralShare, bend.NeutralShare)
            .Number(BendFields.SetTurnDeg, bend.Setting?.TurnDeg)
            .Number(BendFields.SetRadiusMm, bend.Setting?.InsideRadiusMm)
            .Flag(BendFields.Tested, bend.Setting?.Tested ?? false))
        .Rows(StripFields.Notches, strip.Notches, n => [n.FromMm, n.ToMm]);

    /// <summary>The plan of the stock.</summary>
    public static void Stock(JsonOutput json, RuleStock stock, int dies) => json
        .Number(StockFields.LengthMm, stock.LengthMm)
        .Number(StockFields.CutLossMm, stock.CutLossMm)
        .Number(StockFields.Dies, dies)
        .Number(StockFields.Lengths, stock.Lengths)
        .Number(StockFields.Bound, stock.Bound)
        .Objects(StockFields.Cuts, stock.Cuts, (item, cut) => item
            .Number(CutFields.Times, cut.Times)
            .Rows(CutFields.Pieces, cut.Pieces, p => [p.Strip, p.Count])
            .Number(CutFields.OffcutMm, cut.OffcutMm));

    /// <summary>Table of the pieces, their bends and notches: <c>rule.csv</c>.</summary>
    public static byte[] Csv(DieDesign design) => RuleListing.Columns.Csv(RuleListing.Lines(design));

    /// <summary>Table of the cuts: <c>rule-stock.csv</c>; a line a kind of piece in each way to cut.</summary>
    public static byte[] StockCsv(DieDesign design) => RuleStockListing.Columns.Csv(RuleStockListing.Lines(design));
}
