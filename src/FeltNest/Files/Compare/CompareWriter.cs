using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Json;
using FeltNest.Files.Studies;
using FeltNest.Layout.Limits;
using static FeltNest.Files.Compare.CompareDocument;
using static FeltNest.Files.Compare.CompareFindingFields;
using static FeltNest.Files.Compare.CompareWayFields;

namespace FeltNest.Files.Compare;

/// <summary>Writes a comparison as JSON (schema feltnest/compare/1).</summary>
internal static class CompareWriter
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Json(Comparison comparison)
    {
        CompareRequest question = comparison.Question;
        using JsonOutput json = new(CompareDocument.Document);
        json.Text(CompareDocument.Part, question.Lay.Part.Name)
            .Text(CompareDocument.Costs, question.Costs?.Name)
            .ObjectOrNull(
                CompareDocument.DieLife, question.Costs?.Die,
                (
                    item,
                    die) => item
                        .Number(DieLifeFields.Strikes, die.LifeStrikes)
                        .Text(DieLifeFields.Basis, die.LifeOf is null ? "costs" : "readings")
                        .Text(DieLifeFields.Die, die.LifeOf))
            .Number(CompareDocument.Balls, 1000 * question.ThousandBalls)
            .Text(CompareDocument.Method, question.Scan ? "parallel rows from one set of tables" : "searched by all ways")
            .Object(CompareDocument.Lay, fields => StudyJson.Rules(fields, question.Lay))
            .Flag(CompareDocument.CutShort, comparison.CutShort)
            .Text(CompareDocument.Best, comparison.Best.Case.Name)
            .Objects(CompareDocument.Rows, comparison.Rows, WriteRow)
            .Objects(
                CompareDocument.Unanswered, comparison.Unanswered,
                (item, none) => item.Text(UnansweredFields.Name, none.Name).Text(UnansweredFields.Reason, none.Reason))
            .Text(CompareDocument.Die, DieWords(comparison));
        Findings(json, comparison);
        return json.Finish();
    }

    // Long because it is one list of fields in the order of the file.
    private static void Findings(JsonOutput json, Comparison comparison) => json
        .Objects(CompareDocument.DropWidths, comparison.DropWidths, (item, drop) => item
            .Number(DropWidthFields.Rows, drop.Rows)
            .Number(DropWidthFields.LeastWidthMm, drop.LeastWidthMm)
            .Number(DropWidthFields.PanelsPerMetre, drop.PanelsPerMetre))
        .Objects(CompareDocument.Crossovers, comparison.Crossovers, (item, at) => item
            .Number(CrossoverFields.WidthMm, at.WidthMm)
            .Number(CrossoverFields.RowsBelow, at.RowsBelow)
            .Number(CrossoverFields.RowsAbove, at.RowsAbove))
        .Objects(CompareDocument.BreakEvens, comparison.BreakEvens, (item, even) => item
            .Text(BreakEvenFields.Offer, even.Offer)
            .Text(BreakEvenFields.Against, even.Against)
            .Number(BreakEvenFields.Price, Money(even.Price.Amount))
            .Text(BreakEvenFields.PriceUnit, PriceUnits.WordOf(even.Price.Unit))
            .Text(BreakEvenFields.Currency, even.Price.Currency))
        .Objects(CompareDocument.Values, comparison.Values, (item, value) => item
            .Text(ValueFields.Change, value.Change)
            .Number(ValueFields.SquareMetresPerMillionBalls, value.SquareMetresPerMillionBalls)
            .Number(ValueFields.CostPerMillionBalls, Money(value.MoneyPerMillionBalls))
            .Number(ValueFields.FeltPerMillionBalls, Money(value.PartsPerMillionBalls?.Felt))
            .Number(ValueFields.StrikesPerMillionBalls, Money(value.PartsPerMillionBalls?.Strikes))
            .Number(ValueFields.DiePerMillionBalls, Money(value.PartsPerMillionBalls?.Die)))
        .Objects(CompareDocument.Flips, comparison.Flips, (item, flip) => item
            .Text(FlipFields.Assumption, flip.Assumption)
            .Number(FlipFields.Now, flip.Now)
            .Number(FlipFields.At, flip.At)
            .Text(FlipFields.Best, flip.Best)
            .Flag(FlipFields.Stated, flip.IsStated))
        .Objects(CompareDocument.Swings, comparison.Swings, (item, swing) => item
            .Text(SwingFields.Assumption, swing.Assumption)
            .Number(SwingFields.Low, swing.Low)
            .Number(SwingFields.Likely, swing.Likely)
            .Number(SwingFields.High, swing.High)
            .Number(SwingFields.CostAtLow, Money(swing.TotalAtLow))
            .Number(SwingFields.CostAtHigh, Money(swing.TotalAtHigh))
            .Text(SwingFields.BestAtLow, swing.BestAtLow)
            .Text(SwingFields.BestAtHigh, swing.BestAtHigh))
        .ObjectOrNull(CompareDocument.Outlook, comparison.Outlook, CompareOutlookWriter.Outlook)
        .ObjectOrNull(
            CompareDocument.YearTerms, comparison.Question.Costs is { AnnualBalls: not null } costs ? costs : null,
            CompareOutlookWriter.Terms)
        .Objects(CompareDocument.Years, comparison.Years, CompareOutlookWriter.Year)
        .Objects(CompareDocument.Gang, comparison.Gang, (item, choice) => item
            .Number(GangFields.Cavities, choice.Cavities)
            .Number(GangFields.Plies, choice.Plies)
            .Number(GangFields.PanelsPerStrike, choice.PanelsPerStrike)
            .Number(GangFields.StrikesPerThousandBalls, choice.StrikesPerThousandBalls)
            .Number(GangFields.DiePrice, Money(choice.DiePrice))
            .Number(GangFields.RunningCostPerThousandBalls, Money(choice.RunningCost))
            .Number(GangFields.CostPerThousandBalls, Money(choice.Total))
            .Number(GangFields.PaysFromThousandBalls, Money(choice.PaysFromThousandBalls)))
        .Objects(
            CompareDocument.Sweep, comparison.Sweep,
            (
                item,
                point) => item
                    .Number(SweepFields.WidthMm, point.WidthMm)
                    .Number(SweepFields.Rows, point.Rows)
                    .Number(SweepFields.WastePercent, point.WastePercent));

    private static string? DieWords(Comparison comparison)
    {
        if (comparison.Die is null)
        {
            return null;
        }

        return comparison.Question.Kept is null ? $"of {comparison.Best.Case.Name}" : "kept";
    }

    // Long because it is one list of fields in the order of the file.
    private static void WriteRow(JsonOutput json, CompareRow row)
    {
        (FeltAccount felt, FeltOffer? offer, EdgeTrims trims) = (row.Account, row.Case.Offer, row.Case.Trims);
        json.Text(RowFields.Name, row.Case.Name)
            .Number(RowFields.Rank, row.Rank)
            .Text(RowFields.Felt, offer?.Felt)
            .Text(RowFields.Lot, offer?.Lot)
            .Number(RowFields.WidthMm, row.Case.WidthMm)
            .Number(RowFields.EdgeMm, trims.LowerMm)
            .Number(RowFields.UpperEdgeMm, trims.UpperMm)
            .Number(RowFields.PanelsPerMetre, row.Yield.PanelsPerMetre)
            .Number(RowFields.BallsPerMetre, row.Yield.BallsPerMetre)
            .Number(RowFields.WastePercent, row.Yield.WastePercent)
            .Object(RowFields.PerThousandBalls, use => use
                .Number(PerThousandBallsFields.Metres, felt.PerThousandBalls.Metres)
                .Number(PerThousandBallsFields.SquareMetres, felt.PerThousandBalls.SquareMetres)
                .Number(PerThousandBallsFields.Kilograms, felt.PerThousandBalls.Kilograms)
                .Number(PerThousandBallsFields.NetSquareMetres, felt.NetSquareMetres)
                .Number(PerThousandBallsFields.Strikes, felt.StrikesPerThousandBalls))
            .Text(RowFields.MassBasis, offer?.MassBasis)
            .Object(RowFields.Account, account => Account(account, felt.Shares))
            .Object(RowFields.Roll, roll => roll
                .Number(RowRollFields.LengthM, felt.RollLengthM)
                .Number(RowRollFields.Repeats, felt.Repeats)
                .Number(RowRollFields.RemnantMm, felt.RemnantMm)
                .Number(RowRollFields.Balls, felt.RollLengthM is null ? null : felt.Balls)
                .Number(RowRollFields.MinimumThousandBalls, offer?.MinimumM / felt.PerThousandBalls.Metres))
            .Number(RowFields.CostPerThousandBalls, Money(row.Total))
            .Text(RowFields.Currency, row.Sheet?.Currency)
            .Objects(RowFields.CostSheet, row.Sheet?.Lines ?? [], (item, line) => item
                .Number(CostSheetFields.Line, line.Number)
                .Text(CostSheetFields.Name, line.Name)
                .Number(CostSheetFields.Quantity, line.Quantity)
                .Text(CostSheetFields.Unit, line.Unit)
                .Number(CostSheetFields.Amount, Money(line.Amount)))
            .Number(RowFields.DiePrice, Money(row.Sheet?.Die?.Price))
            .ObjectOrNull(RowFields.Purchase, row.Sheet?.Purchase, (item, bought) => item
                .Number(PurchaseFields.NeededM, bought.NeededM)
                .Number(PurchaseFields.BoughtM, bought.BoughtM)
                .Number(PurchaseFields.Rolls, bought.Rolls)
                .Number(PurchaseFields.Price, Money(row.Sheet!.Price.Amount)))
            .Object(RowFields.LeastFelt, item => Way(item, row.LeastFelt))
            .Objects(RowFields.Front, row.Front, Way)
            .ObjectOrNull(RowFields.Nominal, row.Nominal, (item, wide) => item
                .Number(NominalFields.WidthMm, wide.WidthMm)
                .Number(NominalFields.PanelsPerMetre, wide.PanelsPerMetre)
                .Number(NominalFields.SquareMetresPerThousandBalls, wide.SquareMetresPerThousandBalls)
                .Number(NominalFields.CostPerThousandBalls, Money(wide.Total)))
            .ObjectOrNull(RowFields.KeptDie, row.Kept, (item, kept) => item
                .Number(KeptDieFields.Rows, kept.Rows)
                .Number(KeptDieFields.PanelsPerMetre, kept.PanelsPerMetre)
                .Number(KeptDieFields.SquareMetresPerThousandBalls, kept.SquareMetresPerThousandBalls)
                .Number(KeptDieFields.CostPerThousandBalls, Money(kept.Total))
                .Number(KeptDieFields.NewDiePaysAfterThousandBalls, Money(kept.NewDiePaysAfterThousandBalls)))
            .ObjectOrNull(RowFields.FurtherDies, row.Further, (item, further) => item
                .Number(FurtherDiesFields.Dies, further.Dies)
                .Number(FurtherDiesFields.OneDiePanelsPerMetre, further.OneDiePanelsPerMetre)
                .Number(FurtherDiesFields.OneDieCostPerThousandBalls, Money(further.OneDieTotal))
                .Number(FurtherDiesFields.PayAfterThousandBalls, Money(further.PaysAfterThousandBalls)));
    }

    private static void Way(JsonOutput json, LayChoice way)
    {
        CostParts? parts = way.Sheet is null ? null : CostParts.Of(way.Sheet);
        json.Number(WayFields.PanelsPerMetre, way.Layout.PanelsPerMetre)
            .Number(WayFields.PanelsPerStrike, way.Account.Cavities)
            .Number(WayFields.SquareMetresPerThousandBalls, way.SquareMetres)
            .Number(WayFields.StrikesPerThousandBalls, way.Account.StrikesPerThousandBalls)
            .Number(WayFields.Felt, Money(parts?.Felt))
            .Number(WayFields.Strikes, Money(parts?.Strikes))
            .Number(WayFields.Die, Money(parts?.Die))
            .Number(WayFields.CostPerThousandBalls, Money(way.Sheet?.Total));
    }

    private static void Account(JsonOutput json, FeltShares s) => json
        .Number(AccountFields.GoodPanelsPercent, s.Good)
        .Number(AccountFields.BetweenPanelsPercent, s.BetweenPanels)
        .Number(AccountFields.UnusedEdgePercent, s.UnusedEdge)
        .Number(AccountFields.EdgeTrimPercent, s.EdgeTrim)
        .Number(AccountFields.RollEndsPercent, s.RollEnds)
        .Number(AccountFields.RemnantPercent, s.Remnant)
        .Number(AccountFields.FaultsPercent, s.Faults)
        .Number(AccountFields.RejectsPercent, s.Rejects)
        .Number(AccountFields.UnpairedPercent, s.Unpaired);

    private static double? Money(decimal? value) => value is { } money ? (double)Math.Round(money, 6) : null;
}
