using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.Drawing.Sheets.Felts.FeltTestPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Felts;

/// <summary>The second sheet for the tests of felt: the discs, true to size, to cut out and to draw round.</summary>
internal static class FeltDiscSheet
{
    private const double Room = 6;
    private const double Floor = Margin + 34;

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(FeltTestPlan plan)
    {
        (IReadOnlyList<Mark> discs, IReadOnlyList<string> left) = Laid(plan);
        string rest = left.Count == 0 ? string.Empty : $" Strike with a compass, as they do not fit here: {string.Join(", ", left)}.";
        string[] words =
        [
            "Cut out, lay on the felt with the arrow along the warp, draw round, cut or punch. The per cent is the compression of the "
                + "disc's "
                + "edge on the core where the neutral layer is in the middle: a2/8R2. The reading takes the layer measured." + rest,
        ];
        return Of(
            "Felt tests: discs, true to size", "discs to press on a core until one puckers",
            Invariant($"for a core of {plan.CoreDiameterMm:0.##} mm with cement and felt of {plan.ThicknessMm:0.##} mm; cut three of each"),
            [
                new GroupMark("discs", discs),
                new GroupMark("words", [.. TextBlock.Draw(new Point2(Margin, Floor - 4), Width - (2 * Margin), words)]),
                new GroupMark("line", [.. Measured(new Point2(Margin, Margin))]),
            ]);
    }

    // Row by row from the smallest on; what does not fit is named.
    private static (IReadOnlyList<Mark> Discs, IReadOnlyList<string> Left) Laid(FeltTestPlan plan)
    {
        List<Mark> discs = [];
        List<string> left = [];
        double x = Margin;
        double top = Top - 8;
        double row = 0;
        foreach ((double diameter, double percent) in plan.Discs)
        {
            if (x + diameter > Width - Margin && x > Margin)
            {
                (x, top, row) = (Margin, top - row - Room, 0);
            }

            if (x + diameter > Width - Margin || top - diameter < Floor)
            {
                left.Add(Invariant($"{diameter:0} mm ({percent:0.0} %)"));
                continue;
            }

            discs.AddRange(Disc(new Point2(x + (diameter / 2), top - (diameter / 2)), diameter, percent));
            x += diameter + Room;
            row = Math.Max(row, diameter);
        }

        return (discs, left);
    }

    private static IEnumerable<Mark> Disc(Point2 centre, double diameter, double percent)
    {
        double arrow = diameter * 0.35;
        yield return new PathMark([Chain.Circle(centre, diameter / 2)], Ink.Narrow);
        foreach (Mark mark in Arrows.Line(centre - new Point2(arrow, 0), centre + new Point2(arrow, 0), Ink.Faint, 2))
        {
            yield return mark;
        }

        yield return Words(Invariant($"{diameter:0} mm"), centre + new Point2(0, 1.5), anchor: TextAnchor.Middle);
        yield return Words(Invariant($"{percent:0.0} %"), centre - new Point2(0, 4.5), anchor: TextAnchor.Middle);
    }
}
