using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>One way to choose the panel's angle to the warp.</summary>
internal sealed record DesignChoice
{
    /// <summary>In words.</summary>
    public required string Name { get; init; }

    /// <summary>Angle the panel is designed for, degrees.</summary>
    public required double DesignAngleDeg { get; init; }

    /// <summary>Angle it is laid at, degrees, 0 to 180.</summary>
    public required double LaidAngleDeg { get; init; }

    /// <summary>What the roll gives.</summary>
    public required YieldFigures Yield { get; init; }

    /// <summary>Strains at the angle laid, or null where it differs from the design.</summary>
    public required StrainSummary? Strain { get; init; }
}
