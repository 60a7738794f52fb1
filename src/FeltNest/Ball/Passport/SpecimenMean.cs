using FeltNest.Numerics;

namespace FeltNest.Ball.Passport;

/// <summary>Means over specimens, and what follows from several of them.</summary>
internal static class SpecimenMean
{
    /// <summary>Fewest specimens that have a spread worth the name.</summary>
    public const int Fewest = 3;

    // Chance left outside the intervals, on both sides together.
    private const double Outside = 0.05;

    /// <summary>Mean of one value a specimen, with its interval by Student's t.</summary>
    public static FeltValue Of(IReadOnlyList<double> specimens)
    {
        double mean = specimens.Average();
        int freedom = specimens.Count - 1;
        double spread = Math.Sqrt(specimens.Sum(v => (v - mean) * (v - mean)) / freedom);
        double ofMean = spread / Math.Sqrt(specimens.Count);
        return new FeltValue
        {
            Value = mean,
            SpecimenSpread = spread,
            Spread = ofMean,
            Interval = ofMean * FDistribution.Student(Outside, freedom),
            Freedom = freedom,
            Specimens = specimens.Count,
        };
    }

    /// <summary>What follows from several means: their spreads are joined by its slopes, its freedoms by those of the parts (F. E.
    /// Satterthwaite, <i>Biometrics Bulletin</i> 2, 1946, page 110; B. L. Welch, <i>Biometrika</i> 34, 1947, page 28).</summary>
    /// <param name="value">The figure.</param>
    /// <param name="parts">Means and the figure's slope in each.</param>
    public static FeltValue Joined(double value, IReadOnlyList<(FeltValue Part, double Slope)> parts)
    {
        double[] squares = [.. parts.Select(p => p.Slope * p.Slope * p.Part.Spread!.Value * p.Part.Spread.Value)];
        double variance = squares.Sum();
        double spread = Math.Sqrt(variance);
        double freedom = variance > 0
            ? variance * variance / squares.Zip(parts, (square, p) => square * square / p.Part.Freedom!.Value).Sum()
            : parts.Min(p => p.Part.Freedom!.Value);
        return new FeltValue
        {
            Value = value,
            SpecimenSpread = null,
            Spread = spread,
            Interval = spread * FDistribution.Student(Outside, (int)Math.Max(1, Math.Floor(freedom))),
            Freedom = freedom,
            Specimens = parts.Min(p => p.Part.Specimens),
        };
    }
}
