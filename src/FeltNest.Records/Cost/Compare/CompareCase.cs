using FeltNest.Cost.Offers;
using FeltNest.Layout.Limits;

namespace FeltNest.Cost.Compare;

/// <summary>One width or offer to be compared.</summary>
/// <param name="Name">Its name.</param>
/// <param name="WidthMm">Width the lay is planned on, mm: the guaranteed one.</param>
/// <param name="Trims">Edge trims.</param>
/// <param name="Offer">The offer, or null for a bare width.</param>
public sealed record CompareCase(string Name, double WidthMm, EdgeTrims Trims, FeltOffer? Offer)
{
    /// <summary>A bare width.</summary>
    public static CompareCase Of(double widthMm, EdgeTrims trims) =>
        new(FormattableString.Invariant($"{widthMm:0.###} mm"), widthMm, trims, null);

    /// <summary>An offer; its own trim goes before the usual ones.</summary>
    public static CompareCase Of(FeltOffer offer, EdgeTrims usual) =>
        new(offer.Name, offer.PlannedWidthMm, offer.EdgeMm is { } own ? EdgeTrims.Both(own) : usual, offer);
}
