using FeltNest.Die;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>Columns of <c>rule-stock.csv</c>: how lengths of stock are cut, a line for each kind of piece in each way to cut. Without a
/// stated length of stock it has no lines.</summary>
internal static class RuleStockListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("rule-stock.csv")
        .Whole(new WholeField("cut", "number of the way to cut, from 1"), l => l.Cut)
        .Whole(new WholeField("lengths", "lengths of stock cut so"), l => l.Times)
        .Text(new TextField("strip", "as in rule.csv"), l => l.Strip)
        .Whole(new WholeField("pieces", "of it from one length"), l => l.Pieces)
        .Number(new NumberField("blankMm", "length of the flat piece"), l => Math.Round(l.BlankMm, 5))
        .Number(new NumberField("offcutMm", "left over of one length"), l => Math.Round(l.OffcutMm, 5));

    /// <summary>The lines of a die.</summary>
    public static IEnumerable<Line> Lines(DieDesign design) => design.Stock is not { } stock
        ? []
        : stock.Cuts.SelectMany((cut, i) => cut.Pieces.Select(p => new Line
        {
            Cut = i + 1,
            Times = cut.Times,
            Strip = RuleListing.Name(design, design.Strips[p.Strip]),
            Pieces = p.Count,
            BlankMm = design.Strips[p.Strip].BlankMm,
            OffcutMm = cut.OffcutMm,
        }));

    /// <summary>One line.</summary>
    internal readonly record struct Line
    {
        public required int Cut { get; init; }

        public required int Times { get; init; }

        public required string Strip { get; init; }

        public required int Pieces { get; init; }

        public required double BlankMm { get; init; }

        public required double OffcutMm { get; init; }
    }
}
