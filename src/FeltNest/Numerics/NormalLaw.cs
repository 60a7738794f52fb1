using MathNet.Numerics.Distributions;

namespace FeltNest.Numerics;

/// <summary>The normal distribution of mean 0 and deviation 1.</summary>
internal static class NormalLaw
{
    /// <summary>Share of all values below one.</summary>
    public static double Below(double value) => Normal.CDF(0, 1, value);

    /// <summary>The value below which a share lies, the share above 0 and below 1.</summary>
    public static double Quantile(double share) => Normal.InvCDF(0, 1, share);
}
