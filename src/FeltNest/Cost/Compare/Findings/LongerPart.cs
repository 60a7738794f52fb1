using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>A part drawn out along its greatest length, its width kept: what a millimetre of panel length is asked with.</summary>
internal static class LongerPart
{
    /// <summary>The part longer by some mm (shorter below 0). Its polygon is drawn out and stands for it: area and edge are the polygon's,
    /// drawn out likewise.</summary>
    public static LayoutPart Of(LayoutPart part, double moreMm)
    {
        (Point2 along, double length) = Length(part.Outline);
        double more = moreMm / length;
        return part with { Outline = Outline.From(part.Outline.Points.Select(p => p + (along * (more * p.Dot(along))))), Arcs = null };
    }

    /// <summary>Greatest distance of two corners, mm.</summary>
    public static double LengthOf(LayoutPart part) => Length(part.Outline).Length;

    private static (Point2 Along, double Length) Length(Outline outline)
    {
        IReadOnlyList<Point2> points = outline.Points;
        Point2 longest = points[1] - points[0];
        for (int i = 0; i < points.Count; i++)
        {
            for (int j = i + 1; j < points.Count; j++)
            {
                Point2 chord = points[j] - points[i];
                longest = chord.Length > longest.Length ? chord : longest;
            }
        }

        return (longest * (1 / longest.Length), longest.Length);
    }
}
