using FeltNest.Geometry;

namespace FeltNest.Drawing.Parts;

/// <summary>Arrows.</summary>
internal static class Arrows
{
    // A head is this many times as long as it is wide.
    private const double Slender = 3;

    /// <summary>A line with a head at its end and, when wanted, one at its start.</summary>
    public static IEnumerable<Mark> Line(Point2 from, Point2 to, Pen pen, double head, bool both = false)
    {
        yield return new PathMark([Chain.Open(from, to)], pen);
        yield return Head(from, to, head, pen.Colour);
        if (both)
        {
            yield return Head(to, from, head, pen.Colour);
        }
    }

    /// <summary>A filled head at <paramref name="tip"/>, pointing away from <paramref name="from"/>.</summary>
    public static Mark Head(Point2 from, Point2 tip, double length, Colour colour)
    {
        Point2 way = tip - from;
        Point2 along = way * (length / way.Length);
        Point2 side = along.Left * (0.5 / Slender);
        return new PathMark([Chain.Ring([tip, tip - along + side, tip - along - side])], null, colour);
    }
}
