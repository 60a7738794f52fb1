using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Wrap.Edge;

namespace FeltNest.Panel.Trace;

/// <summary>From a picture of cut panels to their outline in mm.</summary>
internal static class ScanTracer
{
    // Greatest distance between the arcs and the smooth edge, mm: as for a computed panel.
    private const double ArcTolerance = 0.01;

    // Places of an edge that are used: one every half millimetre of an ordinary panel. Places nearer than that share their grain.
    private const int Places = 800;

    /// <summary>The outline of the panels in a picture.</summary>
    /// <exception cref="InputException">No panel can be told.</exception>
    public static TracedPanel Trace(FlatPicture flat)
    {
        FoundPanels found = PanelFinder.Find(flat);
        ArcOutline[] seen = [.. found.Panels.Select(panel => Seen(panel, flat.PixelMm))];
        SmoothEdge? smooth = EdgeSmoother.Smoothed(seen[0], mayBeEven: false);
        PanelAverage? mean = seen.Length > 1 && smooth is not null ? PanelAverage.Of(smooth.Curve, seen[1..]) : null;
        IPlaneCurve? edge = mean?.Edge ?? smooth?.Curve;
        return new TracedPanel
        {
            Outline = edge is null ? seen[0] : BiarcFitter.Fit(edge, ArcTolerance, CurveSymmetry.None).Arcs,
            Flat = flat,
            Found = found,
            Smoothing = smooth?.Smoothing,
            Spread = mean is null ? null : (mean.SpreadMm, mean.GreatestMm),
            Marks = InkMarks.Of(flat, found.Panels[0]),
        };
    }

    private static ArcOutline Seen(Contour panel, double pixel)
    {
        int step = Math.Max(1, panel.Places.Length / Places);
        return ArcOutline.From(panel.Places.Where((_, i) => i % step == 0 && i + (step / 2) < panel.Places.Length)
            .Select(p => new ArcVertex((p.X + 0.5) * pixel, (p.Y + 0.5) * pixel, 0)));
    }
}
