using FeltNest.Geometry;
using FeltNest.Layout.Limits;

namespace FeltNest.Layout.Quality;

/// <summary>A share of the roll that no layout of the part with this gap can exceed, whatever its angles, rows, bands or pockets.</summary>
/// <remarks>Parts a gap g apart, each grown by g/2, do not overlap. A layout in a run of width w, stacked on itself g apart over and over, fills the plane with a period of w + g
/// across; so panels per area of that plane are at most 1 / (area of the grown part), and panels per area of the run at most (w + g)/w times that. Own derivation. The bound is
/// loose: it charges nothing for the pockets that no second part can fill.</remarks>
public static class UtilisationBound
{
    /// <summary>The bound in per cent of the full roll width.</summary>
    public static double Percent(LayoutRequest request)
    {
        // The round corners of the grown polygon are cut by chords, so its area is a hair small and the bound a hair high: it stays a bound.
        double grown = request.GapMm == 0 ? request.Part.Outline.Area : PolygonSets.Offset(request.Part.Outline.Points, request.GapMm / 2).Sum(Area);
        double across = FreeCloth.Of(request).Sum(run => run.High - run.Low + request.GapMm);
        return Math.Min(100 * request.UsableWidthMm / request.RollWidthMm, 100 * request.Part.AreaMm2 / grown * across / request.RollWidthMm);
    }

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
