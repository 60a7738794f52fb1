using FeltNest.Geometry;
using FeltNest.Layout.Limits;

namespace FeltNest.Layout.Quality;

/// <summary>A share of the roll that no layout of the part (or of several parts: the one that fills best counts) with this gap can exceed,
/// whatever its angles, rows, bands or pockets.</summary>
/// <remarks>Parts a gap g apart, each grown by g/2, do not overlap. A layout in a run of width w, stacked on itself g apart over and over,
/// fills the plane with a period of w + g across; so panels per area of that plane are at most 1 / (area of the grown part), and panels per
/// area of the run at most (w + g)/w times that. Own derivation. The bound is loose: it charges nothing for the pockets that no second part
/// can fill.</remarks>
internal static class UtilisationBound
{
    /// <summary>The bound in per cent of the full roll width.</summary>
    public static double Percent(LayoutRequest request)
    {
        double across = FreeCloth.Of(request).Sum(run => run.High - run.Low + request.GapMm);
        double plane = request.Parts.Max(part => part.AreaMm2 / Grown(part.Outline, request.GapMm));
        return Math.Min(100 * request.UsableWidthMm / request.RollWidthMm, 100 * plane * across / request.RollWidthMm);
    }

    /// <summary>The same in panels per metre of roll, for a single part; null where there are two.</summary>
    public static double? PanelsPerMetre(LayoutRequest request) =>
        request.Second is null ? Percent(request) / 100 * request.RollWidthMm / request.Part.AreaMm2 * 1000 : null;

    // The round corners of the grown polygon are cut by chords, so its area is a hair small and the bound a hair high: it stays a bound.
    private static double Grown(Outline outline, double gap) =>
        gap == 0 ? outline.Area : PolygonSets.Offset(outline.Points, gap / 2).Sum(Area);

    private static double Area(Point2[] ring)
    {
        double twice = 0;
        for (int i = 0; i < ring.Length; i++)
        {
            twice += ring[i].Cross(ring[(i + 1) % ring.Length]);
        }

        return twice / 2;
    }
}
