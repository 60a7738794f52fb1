namespace FeltNest.Die.Bend;

/// <summary>One bend of a rule.</summary>
public sealed record RuleBend
{
    /// <summary>Where it begins along the flat piece, mm.</summary>
    public required double FromMm { get; init; }

    /// <summary>Where it ends, mm.</summary>
    public required double ToMm { get; init; }

    /// <summary>Angle it is to have in the die, degrees; positive bends toward the panel, negative toward the waste.</summary>
    public required double TurnDeg { get; init; }

    /// <summary>Radius of the inner face of the body in the die, mm.</summary>
    public required double InsideRadiusMm { get; init; }

    /// <summary>Where the neutral line lies: share of the thickness from the inner face.</summary>
    public required double NeutralShare { get; init; }

    /// <summary>To what the bender forms it so that it springs back right; null where no test bends are known.</summary>
    public BendSetting? Setting { get; init; }
}
