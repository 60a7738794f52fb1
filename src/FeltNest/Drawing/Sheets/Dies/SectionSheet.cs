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

    private static List<Mark> Section(DieOrder order, Point2 topLeft, double scale)
    {
        // The die hangs edge downwards over the felt, as it strikes; the panel is on the left, the waste on the right.
        double t = order.Rule.ThicknessMm;
        double height = order.Rule.HeightMm;
        double board = order.Board.ThicknessMm;
        double waste = order.Rule.BodyInWasteMm;
        double bevel = order.Rule.Bevel is RuleBevel.LongCentre ? 3 * t : 1.6 * t;
        const double half = 13;
        Point2 Paper(double x, double y) => topLeft + (new Point2(x + half, -y) * scale);
        Chain Area(params (double X, double Y)[] corners) => Chain.Ring(corners.Select(c => Paper(c.X, c.Y)));
        double inside = waste - t;
        double outside = waste;
        double felt = height + (0.4 * order.CavityDepthMm);
        List<Mark> marks =
        [
            new PathMark(
                [
                    Area((-half, 0), (inside, 0), (inside, board), (-half, board)),
                    Area((outside, 0), (half, 0), (half, board), (outside, board)),
                ], Ink.Wide, Ink.Trim),
            new PathMark(
                [
                    Area((-half, board), (inside - 0.6, board), (inside - 0.6, height - 0.6), (-half, height - 0.6)),
                    Area((outside + 0.6, board), (half, board), (half, height - 0.6), (outside + 0.6, height - 0.6)),
                ], Ink.Narrow, Ink.Copy),
            new PathMark(
                [
                    Area(
                        (inside, 0), (outside, 0), (outside, height - (outside > 0 ? bevel : 0)), (0, height),
                        (inside, height - (inside < 0 ? bevel : 0))),
                ], Ink.Wide, Ink.Classes[2]),
            new PathMark(
                [Area((-half, felt), (half, felt), (half, felt + order.StackMm), (-half, felt + order.StackMm))], Ink.Narrow, Ink.Cloth),
            new PathMark([Chain.Open(Paper(0, height + 0.3), Paper(0, felt + order.StackMm))], Ink.Centre),
            new TextMark
            {
                Text = "board",
                At = Paper(-half + 1, board / 2),
                HeightMm = Ink.Label,
                Colour = Ink.Dark,
            },
            new TextMark
            {
                Text = "ejection",
                At = Paper(-half + 1, (board + height) / 2),
                HeightMm = Ink.Label,
                Colour = Ink.Dark,
            },
            new TextMark
            {
                Text = "felt: panel",
                At = Paper(-half + 1, felt + (order.StackMm / 2) + (1.75 / scale)),
                HeightMm = Ink.Label,
                Colour = Ink.Dark,
            },
            new TextMark
            {
                Text = "waste",
                At = Paper(half - 1, felt + (order.StackMm / 2) + (1.75 / scale)),
                HeightMm = Ink.Label,
                Colour = Ink.Dark,
                Anchor = TextAnchor.End,
            },
            new TextMark
            {
                Text = "dimensioned line: the cutting edge",
                At = Paper(0, felt + order.StackMm) - new Point2(0, 5),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
                Anchor = TextAnchor.Middle,
            },
        ];
        marks.AddRange(
            Dimension.Upright(
                Paper(half, 0), Paper(half, board), Paper(half, 0).X + 12, board.ToString("0.#", CultureInfo.InvariantCulture)));
        marks.AddRange(
            Dimension.Upright(
                Paper(half, 0), Paper(half, height), Paper(half, 0).X + 24, height.ToString("0.##", CultureInfo.InvariantCulture)));
        marks.AddRange(
            Dimension.Level(Paper(inside, 0), Paper(outside, 0), topLeft.Y + 9, t.ToString("0.##", CultureInfo.InvariantCulture)));
        return marks;
    }

    private static IReadOnlyList<(string, string)> Figures(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        string F(double value, string format = "0.0") => value.ToString(format, CultureInfo.InvariantCulture);
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
}
