namespace FeltNest.Files.Check;

/// <summary>How near stated figures and those worked out again have to be.</summary>
internal static class Shares
{
    /// <summary>Figures this near, as a share of the larger, differ by the rounding of sums alone.</summary>
    public const double Rounding = 1e-6;

    // Figures near 0 need room of their own.
    private const double Least = 1e-6;

    /// <summary>The room that a figure has.</summary>
    public static double Room(double value) => Least + (Rounding * Math.Abs(value));
}
