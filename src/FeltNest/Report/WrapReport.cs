using FeltNest.Ball;
using FeltNest.Panel.Wrap;

namespace FeltNest.Report;

/// <summary>The table a wrap prints.</summary>
internal static class WrapReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="outline">Name of the outline laid.</param>
    /// <param name="byMap">True when the edge was held by the outline's own edge map.</param>
    /// <param name="wrap">What came out.</param>
    public static string Text(BallSpec ball, string outline, bool byMap, WrapResult wrap)
    {
        TextTable table = new();
        table.Heading($"{outline} laid on {ball.Name}")
            .Line("fitted sphere, radius", ball.FittedRadiusMm, "0.000", "mm");

        table.Heading("Edge free: two copies, the second half-turned")
            .Line("largest gap", Millimetres(wrap.EdgeFree.LargestGapMm), "between the two edges, along the sphere")
            .Line("largest overlap", Millimetres(wrap.EdgeFree.LargestOverlapMm), "the copies turned for the least mean square gap")
            .Line("elastic energy", wrap.EdgeFree.EnergyNmm, "0.00", "N mm");

        table.Heading(byMap ? "Edge drawn to the seam, each place to its own" : "Edge drawn to the seam, free to slide along it");
        if (wrap.EdgeHeld is { } held)
        {
            table.Line(
                "greatest stretch", held.MaxStretchPercent, "0.00", "%",
                FormattableString.Invariant($"limit in the ball file {ball.Felt.MaxStretchPercent:0.##} %"))
                .Line("greatest compression", held.MaxCompressionPercent, "0.00", "%")
                .Line("greatest edge pull", held.EdgePullNPerMm, "0.000", "N/mm", "what closing the seam needs")
                .Line("elastic energy", held.EnergyNmm, "0.00", "N mm")
                .Line("edge off the seam", held.EdgeOffSeamMm, "0.000", "mm", "what the solve left");
        }
        else
        {
            table.Note($"Not drawn: {wrap.WhyNotHeld}.");
        }

        return table.Note("Bending, wrinkling and contact are not modelled: prove it on a ball.").ToString();
    }

    private static string Millimetres(double? value) => value is { } met ? FormattableString.Invariant($"{met:0.00} mm") : "not met";
}
