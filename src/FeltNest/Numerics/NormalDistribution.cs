using MathNet.Numerics.Distributions;

namespace FeltNest.Numerics;

/// <summary>The normal distribution of mean 0 and standard deviation 1.</summary>
internal static class NormalDistribution
{
    /// <summary>Share of all values below one.</summary>
    public static double Below(double value) => Normal.CDF(0, 1, value);

    /// <summary>The value that a share of all lies below.</summary>
    /// <param name="share">The share, above 0 and below 1.</param>
    public static double Quantile(double share) => Normal.InvCDF(0, 1, share);
}
