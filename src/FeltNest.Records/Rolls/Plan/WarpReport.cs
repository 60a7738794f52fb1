using FeltNest.Layout;

namespace FeltNest.Rolls.Plan;

/// <summary>What the skew of a roll does to one kind of panel.</summary>
internal readonly record struct WarpReport
{
    /// <summary>Index into the layout's parts.</summary>
    public required int Part { get; init; }

    /// <summary>Angle from the roll's length to +u, degrees, 0 to 180.</summary>
    public required double LaidAngleDeg { get; init; }

    /// <summary>Angle from the skewed warp to +u, degrees, 0 to 180.</summary>
    public required double WarpAngleDeg { get; init; }

    /// <summary>How far that is from the angle the panel is designed for, degrees, -90 to 90; null where any angle serves.</summary>
    public required double? OffDesignDeg { get; init; }

    /// <summary>One line a kind of panel, in the order of the pattern.</summary>
    public static IReadOnlyList<WarpReport> Of(StrikePattern pattern, RollLayout layout, double skewDeg) =>
    [
        .. PanelClasses.Of(pattern, false).Select(one => pattern.Panels[one.Min()].Placed).Select(panel => new WarpReport
        {
            Part = panel.Part,
            LaidAngleDeg = Half(panel.AngleDeg),
            WarpAngleDeg = Half(panel.AngleDeg - skewDeg),
            OffDesignDeg = layout.Parts[panel.Part].WarpAngleDeg is { } design
                ? Math.IEEERemainder(panel.AngleDeg - skewDeg - design, 180)
                : null,
        }),
    ];

    private static double Half(double angle) => angle - (Math.Floor(angle / 180) * 180);
}
