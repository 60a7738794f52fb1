using FeltNest.Layout.Limits;

namespace FeltNest.Layout;

/// <summary>What the shop allows.</summary>
/// <param name="WarpAngleDeg">The one angle (mod 180) from +x to +u that panels may have, degrees; null when free.</param>
/// <param name="WarpToleranceDeg">How far a panel may lie off that angle, degrees, 0 to 90.</param>
/// <param name="Rows">Which tilts may be mixed.</param>
/// <param name="OneWay">All panels within 90 degrees of one direction: no half-turns.</param>
public sealed record LayoutRules(double? WarpAngleDeg, double WarpToleranceDeg, RowRule Rows, bool OneWay)
{
    /// <summary>Most bands across the width that may have a repeat, and so a die, of their own.</summary>
    public int Bands { get; init; } = 1;

    /// <summary>Stripes along the roll that no panel may touch, lowest first.</summary>
    public IReadOnlyList<ForbiddenStrip> Forbidden { get; init; } = [];

    /// <summary>What one die can hold, or null for anything.</summary>
    public DieLimit? Die { get; init; }

    /// <summary>Least length of a repeat, mm: shorter feeds are too many strokes or cannot be indexed.</summary>
    public double LeastRepeatMm { get; init; }

    /// <summary>Layers cut by one strike.</summary>
    public Plies Plies { get; init; } = Plies.One;
}
