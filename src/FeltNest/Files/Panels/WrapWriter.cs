using FeltNest.Ball;
using FeltNest.Files.Json;
using FeltNest.Panel.Wrap;
using static FeltNest.Files.Panels.WrapDocument;

namespace FeltNest.Files.Panels;

/// <summary>Writes a flat outline laid on a ball (schema feltnest/wrap/1).</summary>
internal static class WrapWriter
{
    /// <summary>The file's bytes.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="outline">Name of the outline laid.</param>
    /// <param name="byMap">True when the edge was held by the outline's own edge map, false when it slid along the seam.</param>
    /// <param name="turnedDeg">How far the outline was turned to lie along u, degrees.</param>
    /// <param name="wrap">What came out.</param>
    public static byte[] Write(BallSpec ball, string outline, bool byMap, double turnedDeg, WrapResult wrap)
    {
        using JsonOutput json = new(WrapDocument.Document);
        json.Text(WrapDocument.Ball, ball.Name)
            .Text(WrapDocument.Outline, outline)
            .Number(WrapDocument.RadiusMm, ball.FittedRadiusMm)
            .NumberOr(WrapDocument.WarpAngleDeg, ball.Panel.WarpAngleDeg)
            .Number(WrapDocument.TurnedDeg, turnedDeg)
            .Object(WrapDocument.EdgeFree, free => free
                .Number(EdgeFreeFields.EnergyNmm, wrap.EdgeFree.EnergyNmm)
                .Number(EdgeFreeFields.LargestGapMm, wrap.EdgeFree.LargestGapMm)
                .Number(EdgeFreeFields.LargestOverlapMm, wrap.EdgeFree.LargestOverlapMm)
                .Number(EdgeFreeFields.TurnDeg, wrap.EdgeFree.Turn * 180 / Math.PI)
                .Number(EdgeFreeFields.Residual, wrap.EdgeFree.Residual)
                .Rows(EdgeFreeFields.Edge, wrap.EdgeFree.Edge, p => [p.X, p.Y, p.Z])
                .Rows(
                    EdgeFreeFields.Gaps, wrap.EdgeFree.Gaps.Select((gap, place) => (gap, place)).Where(g => g.gap is not null),
                    g => [g.place, g.gap!.Value]))
            .ObjectOrNull(WrapDocument.EdgeHeld, wrap.EdgeHeld, (held, item) => held
                .Text(EdgeHeldFields.By, byMap ? "edge map" : "sliding along the seam")
                .Number(EdgeHeldFields.EnergyNmm, item.EnergyNmm)
                .Number(EdgeHeldFields.MaxStretchPercent, item.MaxStretchPercent)
                .Number(EdgeHeldFields.MaxCompressionPercent, item.MaxCompressionPercent)
                .Number(EdgeHeldFields.EdgePullNPerMm, item.EdgePullNPerMm)
                .Number(EdgeHeldFields.EdgeOffSeamMm, item.EdgeOffSeamMm)
                .Number(EdgeHeldFields.Residual, item.Residual))
            .Text(WrapDocument.WhyNotHeld, wrap.WhyNotHeld);
        return json.Finish();
    }
}
