using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Order;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>Section through board, rule, ejection and felt, with the force, how it is measured, what to watch, and safety.</summary>
internal static class SectionSheet
{
    // Half the width of the section, mm of the die.
    private const double Half = 13;

    private static readonly PaperSize Size = PaperSize.Of("A3");

    /// <summary>Draws the sheet as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int number, int count)
    {
        DieOrder order = design.Request.Order;
        DrawingScale scale = DrawingScale.Fitting(30, order.Rule.HeightMm + order.StackMm, 180, 150, 10);
        List<Mark> marks =
            DieParts.Base(Size, order, new SheetPlace { Number = number, Count = count, Scale = scale.Words, Part = "Edge section" });
        Point2 top = DieParts.ColumnTop(Size);
        double left = Size.Space.MinX + DieParts.Rim;
        double right = top.X - DieParts.Rim;
        marks.AddRange(Section(order, new Point2(left + 14, Size.Space.MaxY - 24), scale.Factor));
        (IEnumerable<Mark> safety, _) = DieParts.Safety(new Point2(top.X, DieParts.TitleTop(Size)), DieParts.Column);
        marks.AddRange(safety);
        marks.AddRange(FigureTable.Draw(top, DieParts.Column - 2, Figures(design)));
        (IEnumerable<Mark> procedure, double high) = DieParts.Boxed(
            new Point2(left, Size.Space.MinY + 4), right - left, "FORCE OF THE SHOP'S OWN FELT",
            [.. SafetyWords.ForceProcedure, .. SafetyWords.Brief]);
        marks.AddRange(procedure);
        double notesTop = Size.Space.MinY + 4 + high + 4 + TextBlock.Height(Notes(design), right - left);
        marks.AddRange(TextBlock.Draw(new Point2(left, notesTop), right - left, Notes(design)));
        return new Sheet
        {
            Title = $"{order.Name}: edge section",
            Description = $"Section of the edge at {scale.Words}, force, what to watch and safety.",
            WidthMm = Size.WidthMm,
            HeightMm = Size.HeightMm,
            Symbols = [],
            Marks = marks,
        };
    }

    private static string[] Notes(DieDesign design) =>
        design.Notes.Count == 0 ? ["To watch: nothing found."] : ["To watch:", .. design.Notes.Select((n, i) => $"{i + 1}  {n.Text}")];

    // The die hangs edge downwards over the felt, as it strikes; the panel is on the left, the waste on the right.
    private static IEnumerable<Mark> Section(DieOrder order, Point2 topLeft, double scale)
    {
        Cut cut = new(topLeft, scale);
        return [.. Bodies(order, cut), .. Names(order, cut), .. Sizes(order, cut)];
    }

    // Board, ejection, rule, felt, and the line of the cutting edge.
    private static IEnumerable<Mark> Bodies(DieOrder order, Cut cut)
    {
        double height = order.Rule.HeightMm;
        double board = order.Board.ThicknessMm;
        double outside = order.Rule.BodyInWasteMm;
        double inside = outside - order.Rule.ThicknessMm;
        double felt = FeltTop(order);
        yield return new PathMark(
            [
                cut.Area((-Half, 0), (inside, 0), (inside, board), (-Half, board)),
                cut.Area((outside, 0), (Half, 0), (Half, board), (outside, board)),
            ], Ink.Wide, Ink.Trim);
        yield return new PathMark(
            [
                cut.Area((-Half, board), (inside - 0.6, board), (inside - 0.6, height - 0.6), (-Half, height - 0.6)),
                cut.Area((outside + 0.6, board), (Half, board), (Half, height - 0.6), (outside + 0.6, height - 0.6)),
            ], Ink.Narrow, Ink.Copy);
        yield return new PathMark([RuleBody(order.Rule, cut)], Ink.Wide, Ink.Classes[2]);
        yield return new PathMark(
            [cut.Area((-Half, felt), (Half, felt), (Half, felt + order.StackMm), (-Half, felt + order.StackMm))], Ink.Narrow, Ink.Cloth);
        yield return new PathMark([Chain.Open(cut.Paper(0, height + 0.3), cut.Paper(0, felt + order.StackMm))], Ink.Centre);
    }

    private static Chain RuleBody(DieRule rule, Cut cut)
    {
        double height = rule.HeightMm;
        double outside = rule.BodyInWasteMm;
        double inside = outside - rule.ThicknessMm;
        double bevel = rule.Bevel is RuleBevel.LongCentre ? 3 * rule.ThicknessMm : 1.6 * rule.ThicknessMm;
        return cut.Area(
            (inside, 0), (outside, 0), (outside, height - (outside > 0 ? bevel : 0)), (0, height),
            (inside, height - (inside < 0 ? bevel : 0)));
    }

    private static IEnumerable<Mark> Names(DieOrder order, Cut cut)
    {
        double board = order.Board.ThicknessMm;
        double felt = FeltTop(order);
        double stack = felt + (order.StackMm / 2) + (1.75 / cut.Scale);
        yield return Name("board", cut.Paper(-Half + 1, board / 2), Ink.Label, TextAnchor.Start);
        yield return Name("ejection", cut.Paper(-Half + 1, (board + order.Rule.HeightMm) / 2), Ink.Label, TextAnchor.Start);
        yield return Name("felt: panel", cut.Paper(-Half + 1, stack), Ink.Label, TextAnchor.Start);
        yield return Name("waste", cut.Paper(Half - 1, stack), Ink.Label, TextAnchor.End);
        yield return Name(
            "dimensioned line: the cutting edge", cut.Paper(0, felt + order.StackMm) - new Point2(0, 5), Ink.Note, TextAnchor.Middle);
    }

    private static TextMark Name(string text, Point2 at, double high, TextAnchor anchor) => new()
    {
        Text = text,
        At = at,
        HeightMm = high,
        Colour = Ink.Dark,
        Anchor = anchor,
    };

    private static IEnumerable<Mark> Sizes(DieOrder order, Cut cut)
    {
        double height = order.Rule.HeightMm;
        double board = order.Board.ThicknessMm;
        double outside = order.Rule.BodyInWasteMm;
        double inside = outside - order.Rule.ThicknessMm;
        Point2 corner = cut.Paper(Half, 0);
        return
        [
            .. Dimension.Upright(corner, cut.Paper(Half, board), corner.X + 12, F(board, "0.#")),
            .. Dimension.Upright(corner, cut.Paper(Half, height), corner.X + 24, F(height, "0.##")),
            .. Dimension.Level(
                cut.Paper(inside, 0), cut.Paper(outside, 0), cut.TopLeft.Y + 9, F(order.Rule.ThicknessMm, "0.##")),
        ];
    }

    private static double FeltTop(DieOrder order) => order.Rule.HeightMm + (0.4 * order.CavityDepthMm);

    private static IReadOnlyList<(string, string)> Figures(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        return
        [
            ("Rule and board", string.Empty),
            ("rule", $"{F(order.Rule.Points, "0.#")} pt: {F(order.Rule.ThicknessMm, "0.##")} x {F(order.Rule.HeightMm, "0.##")} mm"),
            ("bevel", DieParts.Bevel(order.Rule.Bevel)), ("hardness", order.Rule.Hardness),
            ("board", $"{order.Board.Material}, {F(order.Board.ThicknessMm, "0.#")} mm"), ("ejection", order.Ejection.Material),
            (
                "room from board to edge; stack",
                $"{F(order.CavityDepthMm)} mm; {order.Plies} x {F(order.FeltThicknessMm, "0.##")} = {F(order.StackMm)} mm"),
            ("Force of one strike", string.Empty), ("length of cutting edge", $"{F(design.Force.EdgeMm)} mm"),
            ("added for close rules", $"{F(design.Force.CloseAddedMm)} mm"),
            ($"times {order.Plies} x {F(order.Force.NPerMmPerPly, "0.##")} N/mm, edge alone", $"{F(design.Force.BareKn)} kN"),
            (
                "added for ejection; reserve for a dull edge",
                $"{F(order.Force.EjectionPercent, "0.#")} %; {F(order.Force.ReservePercent, "0.#")} %"),
            .. GangFigures.Force(design),
        ];
    }

    private static string F(double value, string format = "0.0") => value.ToString(format, CultureInfo.InvariantCulture);

    // The section on the sheet: across from the cutting edge, down from the top of the board.
    private sealed record Cut(Point2 TopLeft, double Scale)
    {
        public Point2 Paper(double x, double y) => TopLeft + (new Point2(x + Half, -y) * Scale);

        public Chain Area(params (double X, double Y)[] corners) => Chain.Ring(corners.Select(c => Paper(c.X, c.Y)));
    }
}
