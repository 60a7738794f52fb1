using FeltNest.Die;
using FeltNest.Die.Bend;
using FeltNest.Die.Order;
using FeltNest.Die.Stock;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>Cutting list and stock list of the rule of all dies ordered, and the springback of the shop's test bends.</summary>
internal static class RuleStockSheet
{
    // Lines of each list at most; all stand in the CSV files.
    private const int Most = 14;

    // A box to tick, and the height of a drawn length of stock: mm.
    private const double BoxMm = 3;
    private const double Bar = 4.4;

    private static readonly PaperSize Size = PaperSize.Of("A3");

    private static readonly (string Name, double Width)[] Columns =
    [
        ("piece", 14), ("flat, mm", 24), ("in a die", 18), ("in all", 18), ("bends", 16), ("notches", 18), ("cut", 14),
    ];

    /// <summary>Draws the sheet as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int number, int count)
    {
        DieOrder order = design.Request.Order;
        double left = Size.Space.MinX + DieParts.Rim;
        Point2 top = DieParts.ColumnTop(Size);
        double right = top.X - DieParts.Rim;
        double high = Size.Space.MaxY - 10;
        (IEnumerable<Mark> caution, _) =
            DieParts.Boxed(new Point2(left, Size.Space.MinY + 4), right - left, string.Empty, RuleWords.Cautions);
        int listed = Math.Min(Most, design.Strips.Count);
        double below = high - 8 - CellTable.Height(listed) - 6;
        return new Sheet
        {
            Title = $"{order.Name}: rule, cutting list and stock",
            Description = "Cutting list of the rule, how it is cut from stock, springback of test bends.",
            WidthMm = Size.WidthMm,
            HeightMm = Size.HeightMm,
            Symbols = [],
            Marks =
            [
                .. DieParts.Base(Size, order, new SheetPlace { Number = number, Count = count, Scale = "-", Part = "Rule stock" }),
                Words("Cutting list", left, high),
                .. Pieces(design, new Point2(left, high - 2), listed),
                .. design.Stock is { } stock ? Lengths(design, stock, left, below, right - left) : [Words(NoStock(design), left, below)],
                .. caution,
                .. FigureTable.Draw(top, DieParts.Column - 2, Figures(design)),
                .. design.Springback is { } springback
                    ? Chart(springback, new Box
                    {
                        MinX = top.X,
                        MinY = DieParts.TitleTop(Size) + 4,
                        MaxX = top.X + DieParts.Column - 4,
                        MaxY = top.Y - FigureTable.Height(Figures(design)) - 6,
                    })
                    : [],
            ],
        };
    }

    private static IEnumerable<Mark> Pieces(DieDesign design, Point2 at, int listed)
    {
        int dies = design.Request.Order.Wishes.Quantity;
        return
        [
            .. CellTable.Draw(at, Columns, design.Strips.Take(listed).Select(s => new[]
            {
                RuleWords.Name(design, s), Invariant($"{s.BlankMm:0.00}"), Invariant($"{s.Count}"), Invariant($"{s.Count * dies}"),
                Invariant($"{s.Bends.Count}"), Invariant($"{s.Notches.Count}"), " ",
            })),
            .. Enumerable.Range(0, listed).Select(i => Tick(
                at + new Point2(Columns.Sum(c => c.Width) - BoxMm, -1 - ((i + 2) * CellTable.RowStep)))),
        ];
    }

    // Lengths of stock as they are cut, to scale along.
    private static IEnumerable<Mark> Lengths(DieDesign design, RuleStock stock, double left, double top, double wide)
    {
        yield return Words(Invariant($"Stock list: lengths of {stock.LengthMm:0.##} mm"), left, top);
        double scale = (wide - 60) / stock.LengthMm;
        foreach ((int i, StockCut cut) in stock.Cuts.Take(Most).Index())
        {
            double low = top - 4 - ((i + 1) * (Bar + 2.6));
            yield return Tick(new Point2(left, low + 0.6));
            yield return Words(Invariant($"{cut.Times} x"), left + 6, low + 1);
            double x = left + 18;
            foreach (int strip in cut.Pieces.SelectMany(p => Enumerable.Repeat(p.Strip, p.Count)))
            {
                double next = x + (design.Strips[strip].BlankMm * scale);
                yield return Rectangle(x, low, next, low + Bar, Ink.Narrow);
                string name = RuleWords.Name(design, design.Strips[strip]);
                if (StrokeFont.Width(name, Ink.Note) < next - x - 1)
                {
                    yield return Words(name, x + 1, low + 1);
                }

                x = next + (stock.CutLossMm * scale);
            }

            yield return Rectangle(left + 18, low, left + 18 + (stock.LengthMm * scale), low + Bar, Ink.Wide);
            yield return Words(Invariant($"left over {cut.OffcutMm:0.0}"), left + 21 + (stock.LengthMm * scale), low + 1);
        }

        if (stock.Cuts.Count > Most)
        {
            yield return Words(
                $"{stock.Cuts.Count - Most} more ways to cut stand in rule-stock.csv", left, top - 6 - ((Most + 1) * (Bar + 2.6)));
        }
    }

    private static string NoStock(DieDesign design) => design.Request.Order.Rule.StockMm is { } length
        ? Invariant($"No stock list: a piece is longer than the {length:0.##} mm of a length of stock.")
        : "No stock list: the order does not state the length of the stock (rule.stockMm).";

    private static List<(string, string)> Figures(DieDesign design)
    {
        DieRule rule = design.Request.Order.Rule;
        int dies = design.Request.Order.Wishes.Quantity;
        double flat = design.Strips.Sum(s => s.Count * s.BlankMm) * dies;
        List<(string, string)> lines =
        [
            ("Rule of all dies ordered", string.Empty), ("dies", Invariant($"{dies}")),
            ("thickness x height", Invariant($"{rule.ThicknessMm:0.##} x {rule.HeightMm:0.##} mm")), ("bevel", DieParts.Bevel(rule.Bevel)),
            ("pieces", Invariant($"{design.Strips.Sum(s => s.Count) * dies}")), ("flat length of all", Invariant($"{flat / 1000:0.000} m")),
        ];
        if (design.Stock is { } stock)
        {
            lines.AddRange([
                ("lengths of stock", Invariant($"{stock.Lengths} of {stock.LengthMm:0.##} mm, {stock.CutLossMm:0.##} lost at a cut")),
                ("fewest that any plan takes", Invariant($"{stock.Bound}{(stock.Proved ? ": proved" : ": not proved to be reached")}")),
                ("left over of all", Invariant($"{stock.OffcutMm / 1000:0.000} m")),
            ]);
        }

        lines.AddRange([("Springback", string.Empty), ("known from", RuleWords.Known(design.Springback))]);
        return lines;
    }

    // Share of the angle that is left against the radius of the former, as tested and as fitted.
    private static IEnumerable<Mark> Chart(Springback fit, Box frame)
    {
        double most = 1.1 * fit.Tests.Max(t => t.InsideRadiusMm);
        ChartPlot plot = new()
        {
            Room = new Box { MinX = frame.MinX + 14, MinY = frame.MinY + 14, MaxX = frame.MaxX - 4, MaxY = frame.MaxY - 8 },
            Across = ChartAxis.Around([0, most], 6),
            Up = ChartAxis.Around([0, 100], 5),
        };
        Point2[] curve =
        [
            .. Enumerable.Range(0, 61).Select(i => most * i / 60).Select(r => plot.Place(
                r, 100 * Springback.ShareLeft(r + (fit.ThicknessMm / 2), fit.YieldOverModulus, fit.ThicknessMm))),
        ];
        return
        [
            .. plot.Axes(frame, "angle left, % of the angle formed: fit and test bends", "inside radius of the former, mm"),
            new PathMark([Chain.Open(curve)], new Pen(0.35, Ink.Classes[0])),
            .. fit.Tests.Select(t => Cross(plot.Place(t.InsideRadiusMm, 100 * t.AngleGotDeg / t.AngleSetDeg))),
        ];
    }

    private static PathMark Cross(Point2 at) => new(
        [
            Chain.Open(at - new Point2(1, 1), at + new Point2(1, 1)), Chain.Open(at - new Point2(1, -1), at + new Point2(1, -1)),
        ], Ink.Wide);

    private static PathMark Tick(Point2 at) => Rectangle(at.X, at.Y, at.X + BoxMm, at.Y + BoxMm, Ink.Narrow);

    private static PathMark Rectangle(double left, double low, double right, double high, Pen pen) =>
        new([Chain.Rectangle(new Box { MinX = left, MinY = low, MaxX = right, MaxY = high })], pen);

    private static TextMark Words(string text, double x, double y) => new()
    {
        Text = text,
        At = new Point2(x, y),
        HeightMm = Ink.Note,
        Colour = Ink.Dark,
    };
}
