using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Numerics;

namespace FeltNest.Cost.Compare.Outlook;

/// <summary>A figure that may be off: a place in the costs file, or the price of an offer.</summary>
internal sealed record UnsureFigure
{
    /// <summary>Its name, as correlations name it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is, with its unit.</summary>
    public required string Words { get; init; }

    /// <summary>Least value.</summary>
    public required double Low { get; init; }

    /// <summary>Likely value.</summary>
    public required double Likely { get; init; }

    /// <summary>Greatest value.</summary>
    public required double High { get; init; }

    /// <summary>How likely the values between are.</summary>
    public required SpreadShape Shape { get; init; }

    /// <summary>The costs with a value of it, or null for the price of an offer.</summary>
    public Func<CostInputs, double, CostInputs>? With { get; init; }

    /// <summary>Row whose price it is, or null.</summary>
    public string? Row { get; init; }

    /// <summary>The value below which a share of all values lies.</summary>
    /// <param name="share">The share, above 0 and below 1.</param>
    public double At(double share) => Shape switch
    {
        SpreadShape.Uniform => Low + (share * (High - Low)),
        SpreadShape.Normal => Math.Max(0, Likely + ((High - Low) / 4 * NormalDistribution.Quantile(share))),
        _ => Triangular(share),
    };

    // The inverse of the distribution function, a parabola on each side of the likely value.
    private double Triangular(double share)
    {
        double all = High - Low;
        double left = Likely - Low;
        return share * all < left
            ? Low + Math.Sqrt(share * all * left)
            : High - Math.Sqrt((1 - share) * all * (High - Likely));
    }
}
