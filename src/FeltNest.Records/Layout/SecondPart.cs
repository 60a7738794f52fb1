namespace FeltNest.Layout;

/// <summary>A second part that shares the width, in a band of its own.</summary>
/// <param name="Part">The part; it is laid at its own design angle to the warp, or free where any angle serves.</param>
/// <param name="SharePercent">Wanted share of all panels, above 0 and below 100; null to fill a band narrower than a row of the first part,
/// which would else be waste.</param>
public sealed record SecondPart(LayoutPart Part, double? SharePercent);
