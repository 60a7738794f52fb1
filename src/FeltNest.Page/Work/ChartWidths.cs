namespace FeltNest.Page.Work;

/// <summary>The widths of the chart around the one asked.</summary>
internal static class ChartWidths
{
    // From this share of the width to that one, in so many steps.
    private const double From = 0.86;
    private const double To = 1.14;
    private const int Steps = 56;

    /// <summary>Whole millimetres, rising, each once.</summary>
    public static double[] Of(double widthMm) =>
        [.. Enumerable.Range(0, Steps + 1).Select(i => Math.Round(widthMm * (From + ((To - From) * i / Steps)))).Distinct()];
}
