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
    /// <param name="wrap">What came out.</param>
    public static byte[] Write(BallSpec ball, string outline, PieceResult wrap)
    {
        using JsonOutput json = new(WrapDocument.Document);
        json.Text(WrapDocument.Ball, ball.Name)
            .Text(WrapDocument.Outline, outline)
            .Number(WrapDocument.RadiusMm, ball.FittedRadiusMm)
            .NumberOr(WrapDocument.WarpAngleDeg, ball.Panel.WarpAngleDeg)
            .Number(WrapDocument.TurnedDeg, wrap.TurnedDeg)
            .ObjectOrNull(WrapDocument.Smoothing, wrap.Smoothing, (fields, item) => fields
                .Number(SmoothingFields.Places, item.Places)
                .Number(SmoothingFields.RmsMm, item.RmsMm)
                .Number(SmoothingFields.GreatestMm, item.GreatestMm)
                .Number(SmoothingFields.OffDrawnMm, item.OffDrawnMm)
                .Text(SmoothingFields.KeptBy, item.KeptBy))
            .Object(WrapDocument.EdgeFree, free => Free(free, wrap.AsCut))
            .Object(WrapDocument.AfterCure, free => Free(free, wrap.AfterCure))
            .ObjectOrNull(WrapDocument.EdgeHeld, wrap.EdgeHeld, (held, item) => held
                .Text(EdgeHeldFields.By, wrap.IsByMap ? "edge map" : "sliding along the seam")
                .Number(EdgeHeldFields.EnergyNmm, item.EnergyNmm)
                .Number(EdgeHeldFields.MaxStretchPercent, item.MaxStretchPercent)
                .Number(EdgeHeldFields.MaxCompressionPercent, item.MaxCompressionPercent)
                .Number(EdgeHeldFields.EdgePullNPerMm, item.EdgePullNPerMm)
                .Number(EdgeHeldFields.EdgeOffSeamMm, item.EdgeOffSeamMm)
                .Number(EdgeHeldFields.Residual, item.Residual))
            .Text(WrapDocument.WhyNotHeld, wrap.WhyNotHeld);
        return json.Finish();
    }

    private static void Free(JsonOutput fields, EdgeFreeWrap free) => fields
        .Number(EdgeFreeFields.EnergyNmm, free.EnergyNmm)
        .Number(EdgeFreeFields.LargestGapMm, free.LargestGapMm)
        .Number(EdgeFreeFields.LargestOverlapMm, free.LargestOverlapMm)
        .Number(EdgeFreeFields.TurnDeg, free.Turn * 180 / Math.PI)
        .Number(EdgeFreeFields.Residual, free.Residual)
        .Rows(EdgeFreeFields.Edge, free.Edge, p => [p.X, p.Y, p.Z])
        .Rows(
            EdgeFreeFields.Gaps, free.Gaps.Select((gap, place) => (gap, place)).Where(g => g.gap is not null),
            g => [g.place, g.gap!.Value]);
}
