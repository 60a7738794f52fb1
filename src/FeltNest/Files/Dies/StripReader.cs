using FeltNest.Die.Check;
using FeltNest.Files.Json;
using FeltNest.Geometry;
using static FeltNest.Files.Dies.DieRuleFields;

namespace FeltNest.Files.Dies;

/// <summary>Reads the pieces of rule of a die's file.</summary>
internal static class StripReader
{
    // More of one piece, or of lengths cut alike, than any die has.
    private const int MostPieces = 10_000_000;

    /// <summary>The pieces.</summary>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    public static IReadOnlyList<StatedStrip> Strips(
        IReadOnlyList<JsonFields> items, IReadOnlyDictionary<int, ArcOutline> edges, string file) =>
        [.. items.Select(item => new StatedStrip
        {
            Part = item.Whole(StripFields.Panel) is var part && edges.ContainsKey(part)
                ? part
                : throw item.Fault(StripFields.Panel, $"{part} has no edge in this die"),
            Count = item.Whole(StripFields.Count, 0, MostPieces, "pieces of a die"),
            MiddleMm = item.Number(StripFields.MiddleMm),
            BlankMm = item.Number(StripFields.BlankMm),
            StartMitreDeg = item.OptionalNumber(StripFields.StartMitreDeg),
            EndMitreDeg = item.OptionalNumber(StripFields.EndMitreDeg),
            Bends =
            [
                .. item.Objects(StripFields.Bends).Select(b => (
                    b.Number(BendFields.FromMm), b.Number(BendFields.ToMm), b.Number(BendFields.TurnDeg),
                    b.Number(BendFields.InsideRadiusMm), b.Number(BendFields.NeutralShare))),
            ],
            Notches = [.. JsonShapes.Pairs(item, StripFields.Notches, file)],
        })];

    /// <summary>The plan of stock over so many kinds of pieces.</summary>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    public static StatedStock Stock(JsonFields stock, int strips, string file) => new()
    {
        LengthMm = stock.Number(StockFields.LengthMm),
        LossMm = stock.Number(StockFields.CutLossMm),
        Dies = stock.Whole(StockFields.Dies, 1, MostPieces, "dies"),
        Lengths = stock.Whole(StockFields.Lengths),
        Bound = stock.Whole(StockFields.Bound),
        Cuts = [.. stock.Objects(StockFields.Cuts).Select(c => (
            c.Whole(CutFields.Times, 0, MostPieces, "lengths"), Pieces(c, strips, file), c.Number(CutFields.OffcutMm)))],
    };

    private static IReadOnlyList<(int Strip, int Count)> Pieces(JsonFields cut, int strips, string file) =>
        [.. JsonShapes.Pairs(cut, CutFields.Pieces, file).Select(p =>
            p.First >= 0 && p.First < strips && p.First % 1 == 0 && Math.Abs(p.Second) <= MostPieces
                ? ((int)p.First, (int)p.Second)
                : throw cut.Fault(CutFields.Pieces, $"{p.First} is no place in the list of strips"))];
}
