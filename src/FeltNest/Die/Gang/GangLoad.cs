using FeltNest.Die.SharedRule;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Rolls;

namespace FeltNest.Die.Gang;

/// <summary>Where the load of a gang stands, and the board on the press for it.</summary>
internal static class GangLoad
{
    /// <summary>Centre of the length of rule: every edge, less what two cavities share once.</summary>
    public static Point2 Centre(IReadOnlyList<LayoutPart> parts, DieCavity[] cavities, CommonCuts common)
    {
        Point2[] centres = [.. parts.Select(EdgeCentre)];
        (Point2 Centre, double Length)[] weights =
        [
            .. cavities.Select(c =>
                (new Point2(c.Placed.XMm, c.Placed.YMm)
                    + centres[c.Placed.Part].Turned(double.DegreesToRadians(c.Placed.AngleDeg)), parts[c.Placed.Part].PerimeterMm)),
            .. common.Runs.Where(r => r.Other is not null).Select(r => (r.Centre, -r.LengthMm)),
        ];
        double total = weights.Sum(w => w.Length);
        return weights.Aggregate(default(Point2), (sum, w) => sum + (w.Centre * (w.Length / total)));
    }

    /// <summary>How far the board is moved off the bed's centre, which brings the load to it as far as the bed has room.</summary>
    public static Point2 OnBed(PressSpec? press, double length, double width, Point2 load)
    {
        if (press is null)
        {
            return default;
        }

        double roomX = Math.Max(0, (press.Bed.BoardLengthMm - length) / 2);
        double roomY = Math.Max(0, (press.Bed.BoardWidthMm - width) / 2);
        return new Point2(Math.Clamp((length / 2) - load.X, -roomX, roomX), Math.Clamp((width / 2) - load.Y, -roomY, roomY));
    }

    // Centre of the length of a part's polygon: what a rule weighs evenly.
    private static Point2 EdgeCentre(LayoutPart part)
    {
        IReadOnlyList<Point2> points = part.Outline.Points;
        Point2 sum = default;
        for (int i = 0; i < points.Count; i++)
        {
            Point2 a = points[i];
            Point2 b = points[(i + 1) % points.Count];
            sum += (a + b) * (0.5 * (b - a).Length);
        }

        return sum * (1 / part.Outline.Perimeter);
    }
}
