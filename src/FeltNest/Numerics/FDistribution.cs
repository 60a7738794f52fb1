using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace FeltNest.Numerics;

/// <summary>The F distribution of the ratio of two mean squares, and Student's t.</summary>
internal static class FDistribution
{
    /// <summary>Chance that noise alone gives a ratio of at least so much.</summary>
    /// <remarks>By the incomplete beta function, which keeps its digits where the chance is small: M. Abramowitz and I. Stegun, <i>Handbook
    /// of Mathematical Functions</i>, 1964, 26.6.2.</remarks>
    /// <param name="ratio">Ratio of mean squares, 0 or more.</param>
    /// <param name="above">Freedoms of the upper one, 1 or more.</param>
    /// <param name="below">Freedoms of the lower one, 1 or more.</param>
    public static double Tail(double ratio, int above, int below) =>
        SpecialFunctions.BetaRegularized(below / 2.0, above / 2.0, below / (below + (above * ratio)));

    /// <summary>Factor of Student's t that leaves a chance outside on both sides together.</summary>
    /// <param name="chance">The chance, above 0 and below 1.</param>
    /// <param name="freedom">Freedoms of the spread, 1 or more.</param>
    public static double Student(double chance, int freedom) => StudentT.InvCDF(0, 1, freedom, 1 - (chance / 2));
}
