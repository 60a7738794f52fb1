using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>The price at which one offer costs as much per thousand balls as another.</summary>
/// <param name="Offer">The offer whose price is moved.</param>
/// <param name="Against">The offer it is to equal.</param>
/// <param name="Price">That price; at or below 0 where not even a gift would do.</param>
public sealed record BreakEven(string Offer, string Against, FeltPrice Price);
