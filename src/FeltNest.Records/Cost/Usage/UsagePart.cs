namespace FeltNest.Cost.Usage;

/// <summary>One part of the difference from standard; above 0 is more than standard.</summary>
/// <param name="Cause">Why.</param>
/// <param name="Quantity">Felt, in the unit of the account; 0 for the price.</param>
/// <param name="Percent">The same, per cent of the standard quantity.</param>
/// <param name="Money">The same at the standard price; for the price the difference it makes on the felt really used. Null where no
/// standard price is known.</param>
/// <param name="Standard">Share that is lost by standard, %: of the metres, of the panels cut, or of what the part before leaves; null
/// where the cause has none.</param>
/// <param name="Actual">Share really lost, %; null where the cause has none.</param>
public sealed record UsagePart(UsageCause Cause, double Quantity, double Percent, decimal? Money, double? Standard, double? Actual);
