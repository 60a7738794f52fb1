using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>The price at which one offer costs as much per thousand balls as another.</summary>
public sealed record BreakEven
{
    /// <summary>The offer whose price is moved.</summary>
    public required string Offer { get; init; }

    /// <summary>The offer it is to equal.</summary>
    public required string Against { get; init; }

    /// <summary>That price; at or below 0 where not even a gift would do.</summary>
    public required FeltPrice Price { get; init; }
}
