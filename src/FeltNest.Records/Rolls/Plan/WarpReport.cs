using FeltNest.Layout;

namespace FeltNest.Rolls.Plan;

/// <summary>What the skew of a roll does to one kind of panel.</summary>
/// <param name="Part">Index into the layout's parts.</param>
/// <param name="LaidAngleDeg">Angle from the roll's length to +u, degrees, 0 to 180.</param>
/// <param name="WarpAngleDeg">Angle from the skewed warp to +u, degrees, 0 to 180.</param>
/// <param name="OffDesignDeg">How far that is from the angle the panel is designed for, degrees, -90 to 90; null where any angle
/// serves.</param>
public readonly record struct WarpReport(int Part, double LaidAngleDeg, double WarpAngleDeg, double? OffDesignDeg)
{
    /// <summary>One line a kind of panel, in the order of the pattern.</summary>
    public static IReadOnlyList<WarpReport> Of(StrikePattern pattern, RollLayout layout, double skewDeg) =>
    [
        .. PanelClasses.Of(pattern, false).Select(one => pattern.Panels[one.Min()].Placed).Select(panel => new WarpReport(
            panel.Part, Half(panel.AngleDeg), Half(panel.AngleDeg - skewDeg),
            layout.Parts[panel.Part].WarpAngleDeg is { } design ? Math.IEEERemainder(panel.AngleDeg - skewDeg - design, 180) : null)),
    ];

    private static double Half(double angle) => angle - (Math.Floor(angle / 180) * 180);
}
