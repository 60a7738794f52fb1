using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>One way to choose the panel's angle to the warp.</summary>
/// <param name="Name">In words.</param>
/// <param name="DesignAngleDeg">Angle the panel is designed for, degrees.</param>
/// <param name="LaidAngleDeg">Angle it is laid at, degrees, 0 to 180.</param>
/// <param name="Yield">What the roll gives.</param>
/// <param name="Strain">Strains at the angle laid, or null where it differs from the design.</param>
public sealed record DesignChoice(string Name, double DesignAngleDeg, double LaidAngleDeg, YieldFigures Yield, StrainSummary? Strain);
