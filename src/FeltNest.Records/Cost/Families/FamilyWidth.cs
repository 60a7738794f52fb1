using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Families;

/// <summary>A width that may be kept in stock: a bare width, or a felt on offer.</summary>
/// <param name="Name">Its name.</param>
/// <param name="WidthMm">Width the layouts are planned on, mm.</param>
/// <param name="Offer">The offer, or null for a bare width.</param>
public sealed record FamilyWidth(string Name, double WidthMm, FeltOffer? Offer)
{
    /// <summary>A bare width.</summary>
    public static FamilyWidth Of(double widthMm) => new(FormattableString.Invariant($"{widthMm:0.###} mm"), widthMm, null);

    /// <summary>A felt on offer: the width it guarantees.</summary>
    public static FamilyWidth Of(FeltOffer offer) => new(offer.Name, offer.PlannedWidthMm, offer);

    /// <summary>The case of a ball on it; the trim of an offer goes before the ball's.</summary>
    public CompareCase CaseOf(FamilyBall ball) =>
        Offer is { } offer ? CompareCase.Of(offer, ball.Lay.Trims) : CompareCase.Of(WidthMm, ball.Lay.Trims);
}
