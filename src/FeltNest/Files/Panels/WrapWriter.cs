using FeltNest.Ball;
using FeltNest.Files.Json;
using FeltNest.Panel.Wrap;

namespace FeltNest.Files.Panels;

/// <summary>Writes a flat outline laid on a ball (schema feltnest/wrap/1).</summary>
public static class WrapWriter
{
    /// <summary>The file's bytes.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="outline">Name of the outline laid.</param>
    /// <param name="byMap">True when the edge was held by the outline's own edge map, false when it slid along the seam.</param>
    /// <param name="turnedDeg">How far the outline was turned to lie along u, degrees.</param>
    /// <param name="wrap">What came out.</param>
    public static byte[] Write(BallSpec ball, string outline, bool byMap, double turnedDeg, WrapResult wrap)
    {
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Wrap)
            .Text("ball", ball.Name)
            .Text("outline", outline)
            .Number("radiusMm", ball.FittedRadiusMm)
            .NumberOr("warpAngleDeg", ball.Panel.WarpAngleDeg, "any")
            .Number("turnedDeg", turnedDeg)
            .Object("edgeFree", free => free
                .Number("energyNmm", wrap.EdgeFree.EnergyNmm)
                .Number("largestGapMm", Known(wrap.EdgeFree.LargestGapMm))
                .Number("largestOverlapMm", Known(wrap.EdgeFree.LargestOverlapMm))
                .Number("turnDeg", wrap.EdgeFree.Turn * 180 / Math.PI)
                .Number("residual", wrap.EdgeFree.Residual)
                .Rows("edge", wrap.EdgeFree.Edge, p => [p.X, p.Y, p.Z])
                .Rows(
                    "gaps", wrap.EdgeFree.Gaps.Select((gap, place) => (gap, place)).Where(g => double.IsFinite(g.gap)),
                    g => [g.place, g.gap]))
            .ObjectOrNull("edgeHeld", wrap.EdgeHeld, (held, item) => held
                .Text("by", byMap ? "edge map" : "sliding along the seam")
                .Number("energyNmm", item.EnergyNmm)
                .Number("maxStretchPercent", item.MaxStretchPercent)
                .Number("maxCompressionPercent", item.MaxCompressionPercent)
                .Number("edgePullNPerMm", item.EdgePullNPerMm)
                .Number("edgeOffSeamMm", item.EdgeOffSeamMm)
                .Number("residual", item.Residual))
            .Text("whyNotHeld", wrap.WhyNotHeld);
        return json.Finish();
    }

    private static double? Known(double value) => double.IsNaN(value) ? null : value;
}
