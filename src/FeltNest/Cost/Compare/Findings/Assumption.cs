using FeltNest.Cost.Priced;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>A figure that a comparison rests on.</summary>
internal sealed record Assumption
{
    /// <summary>What it is, with its unit.</summary>
    public required string Words { get; init; }

    /// <summary>Its value.</summary>
    public required double Now { get; init; }

    /// <summary>Least value looked at.</summary>
    public required double Low { get; init; }

    /// <summary>Greatest value looked at.</summary>
    public required double High { get; init; }

    /// <summary>True where the user gave low and high.</summary>
    public required bool IsStated { get; init; }

    /// <summary>What changes where it has another value.</summary>
    public required Func<double, PriceChange> At { get; init; }
}
