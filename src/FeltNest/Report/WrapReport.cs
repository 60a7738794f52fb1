using FeltNest.Ball;
using FeltNest.Panel.Wrap;

namespace FeltNest.Report;

/// <summary>The table a wrap prints.</summary>
internal static class WrapReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="outline">Name of the outline laid.</param>
    /// <param name="wrap">What came out.</param>
    public static string Text(BallSpec ball, string outline, PieceResult wrap)
    {
        TextTable table = new();
        table.Heading($"{outline} laid on {ball.Name}")
            .Line("fitted sphere, radius", ball.FittedRadiusMm, "0.000", "mm");
        if (wrap.Smoothing is { } smoothing)
        {
            table.Note($"The {Smoothed(smoothing)}.");
        }

        Free(table, "As cut, at fitting, edge free: two copies, the second half-turned", wrap.AsCut);
        if (ReferenceEquals(wrap.AsCut, wrap.AfterCure))
        {
            table.Note("After cure the same: the ball file states no shrinkage.");
        }
        else
        {
            Free(table, "After cure, edge free", wrap.AfterCure);
        }

        Held(table, ball, wrap);
        return table.Note("Bending, wrinkling and contact are not modelled: prove it on a ball.").ToString();
    }

    private static void Held(TextTable table, BallSpec ball, PieceResult wrap)
    {
        table.Heading(
            wrap.IsByMap
                ? "After cure, edge drawn to the seam, each place to its own"
                : "After cure, edge drawn to the seam, free to slide along it");
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
    }

    // By how much an edge was smoothed, in one sentence without its full stop.
    private static string Smoothed(EdgeSmoothing smoothing)
    {
        string between = FormattableString.Invariant($"between them it runs up to {smoothing.OffDrawnMm:0.000} mm off the lines drawn");
        string kept = smoothing.KeptBy == "nothing" ? string.Empty : $"; within this noise it is kept by {smoothing.KeptBy}, and so taken";
        return FormattableString.Invariant(
            $"edge is smoothed: its {smoothing.Places} places moved by {smoothing.RmsMm:0.000} mm rms and {smoothing.GreatestMm:0.000} mm ")
            + $"at most, {between}{kept}";
    }

    private static void Free(TextTable table, string heading, EdgeFreeWrap free) => table.Heading(heading)
        .Line("largest gap", Millimetres(free.LargestGapMm), "between the two edges, along the sphere")
        .Line("largest overlap", Millimetres(free.LargestOverlapMm), "the copies turned for the least mean square gap")
        .Line("elastic energy", free.EnergyNmm, "0.00", "N mm");

    private static string Millimetres(double? value) => value is { } met ? FormattableString.Invariant($"{met:0.00} mm") : "not met";
}
