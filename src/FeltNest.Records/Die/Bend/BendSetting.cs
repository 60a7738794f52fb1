namespace FeltNest.Die.Bend;

/// <summary>What a bend is formed to, before it springs back.</summary>
public sealed record BendSetting
{
    /// <summary>Angle, degrees, signed as the bend.</summary>
    public required double TurnDeg { get; init; }

    /// <summary>Radius of the inner face, mm.</summary>
    public required double InsideRadiusMm { get; init; }

    /// <summary>Whether the shop's test bends reach that radius.</summary>
    public required bool Tested { get; init; }
}
