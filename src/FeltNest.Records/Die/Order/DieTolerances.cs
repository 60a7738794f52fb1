namespace FeltNest.Die.Order;

/// <summary>Tolerances of the die and of what it cuts.</summary>
public sealed record DieTolerances
{
    /// <summary>Profile of the cutting edge: width of the zone, mm, so plus-minus half of it.</summary>
    public required double EdgeProfileMm { get; init; }

    /// <summary>Position of each cavity: diameter of the circle round its place that its middle lies in, mm.</summary>
    public required double PositionMm { get; init; }

    /// <summary>Profile of a cut panel: width of the zone, mm.</summary>
    public required double PanelProfileMm { get; init; }

    /// <summary>Class of ISO 2768-1 for board and plate: f or m.</summary>
    public required string General { get; init; }
}
