namespace FeltNest.Layout;

/// <summary>What the shop allows.</summary>
/// <param name="WarpAngleDeg">The one angle (mod 180) from +x to +u that panels may have, degrees; null when free.</param>
/// <param name="WarpToleranceDeg">How far a panel may lie off that angle, degrees, 0 to 90.</param>
/// <param name="Rows">Which tilts may be mixed.</param>
/// <param name="OneWay">All panels within 90 degrees of one direction: no half-turns.</param>
public sealed record LayoutRules(double? WarpAngleDeg, double WarpToleranceDeg, RowRule Rows, bool OneWay);
