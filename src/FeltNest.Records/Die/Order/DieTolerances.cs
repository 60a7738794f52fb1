namespace FeltNest.Die.Order;

/// <summary>Tolerances of the die and of what it cuts.</summary>
/// <param name="EdgeProfileMm">Profile of the cutting edge: width of the zone, mm, so plus-minus half of it.</param>
/// <param name="PanelProfileMm">Profile of a cut panel: width of the zone, mm.</param>
/// <param name="General">Class of ISO 2768-1 for board and plate: f or m.</param>
public sealed record DieTolerances(double EdgeProfileMm, double PanelProfileMm, string General);
