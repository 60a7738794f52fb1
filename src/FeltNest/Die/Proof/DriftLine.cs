using FeltNest.Numerics;

namespace FeltNest.Die.Proof;

/// <summary>A straight line by least squares, with what is known of it.</summary>
internal sealed record DriftLine
{
    // Chance to be outside of both ends of an interval together.
    private const double Outside = 0.05;

    /// <summary>Value at x of nought.</summary>
    public required double Start { get; init; }

    /// <summary>Growth a unit of x.</summary>
    public required double Slope { get; init; }

    /// <summary>Points.</summary>
    public required int Count { get; init; }

    /// <summary>Mean x.</summary>
    public required double MeanX { get; init; }

    /// <summary>Sum of squared distances from it.</summary>
    public required double SquaredX { get; init; }

    /// <summary>Standard deviation about the line; null with fewer than three points.</summary>
    public required double? Scatter { get; init; }

    /// <summary>Student's factor for 95 per cent; null with fewer than three points.</summary>
    public double? Factor => Count > 2 ? FDistribution.Student(Outside, Count - 2) : null;

    /// <summary>The line of points at two x or more.</summary>
    public static DriftLine Of(IReadOnlyList<(double X, double Y)> points)
    {
        double meanX = points.Average(p => p.X);
        double meanY = points.Average(p => p.Y);
        double squared = points.Sum(p => (p.X - meanX) * (p.X - meanX));
        double slope = points.Sum(p => (p.X - meanX) * (p.Y - meanY)) / squared;
        double start = meanY - (slope * meanX);
        double rest = points.Sum(p => Math.Pow(p.Y - start - (slope * p.X), 2));
        return new DriftLine
        {
            Start = start,
            Slope = slope,
            Count = points.Count,
            MeanX = meanX,
            SquaredX = squared,
            Scatter = points.Count > 2 ? Math.Sqrt(rest / (points.Count - 2)) : null,
        };
    }

    /// <summary>Between which x the mean line reaches a level, 95 per cent; an end is null where the line may never, or may always have
    /// been, there.</summary>
    /// <remarks>E. C. Fieller, <i>Some problems in interval estimation</i>, Journal of the Royal Statistical Society B 16, 1954: the x at
    /// which the level lies within Student's band of the line, the roots of one quadratic equation.</remarks>
    public (double? From, double? To) Crossing(double level)
    {
        if (Scatter is not { } scatter || Factor is not { } factor)
        {
            return (null, null);
        }

        // (level - meanY - slope d)^2 = (factor scatter)^2 (1/n + d^2/squared), with d the distance from the mean x.
        double band = factor * factor * scatter * scatter;
        double above = level - Start - (Slope * MeanX);
        double a = (Slope * Slope) - (band / SquaredX);
        double root = (Slope * Slope * band / Count) + (((above * above) - (band / Count)) * band / SquaredX);
        if (Slope <= 0 && a > 0)
        {
            return (null, null);
        }

        if (root < 0)
        {
            return (null, null);
        }

        double early = MeanX + (a > 0
            ? ((Slope * above) - Math.Sqrt(root)) / a
            : ((above * above) - (band / Count)) / ((Slope * above) + Math.Sqrt(root)));
        double? late = a > 0 ? MeanX + (((Slope * above) + Math.Sqrt(root)) / a) : null;
        return (Math.Max(0, early), late);
    }
}
