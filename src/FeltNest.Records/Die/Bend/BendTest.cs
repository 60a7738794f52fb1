namespace FeltNest.Die.Bend;

/// <summary>A test bend of the shop's own rule on its own bender.</summary>
public sealed record BendTest
{
    /// <summary>Radius of the inner face as formed, mm: that of the former.</summary>
    public required double InsideRadiusMm { get; init; }

    /// <summary>Angle it was formed to, degrees.</summary>
    public required double AngleSetDeg { get; init; }

    /// <summary>Angle that was left when it was let go, degrees.</summary>
    public required double AngleGotDeg { get; init; }
}
