using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>A figure of the costs file that can be changed by itself.</summary>
internal sealed record CostFigure
{
    /// <summary>Its place in the file.</summary>
    public required string Field { get; init; }

    /// <summary>What it is, with its unit.</summary>
    public required string Words { get; init; }

    /// <summary>Its value, or null where it is not given.</summary>
    public required Func<CostInputs, double?> Get { get; init; }

    /// <summary>The costs with another value of it.</summary>
    public required Func<CostInputs, double, CostInputs> With { get; init; }

    /// <summary>Greatest value looked at where the user gave none, from the value it has; null to look at it only within a range that
    /// is given.</summary>
    public Func<double, double>? UsualMost { get; init; }
}
