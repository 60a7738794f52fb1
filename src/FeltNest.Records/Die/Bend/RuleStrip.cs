namespace FeltNest.Die.Bend;

/// <summary>One piece of rule: as it is cut to length, notched and bent. Positions are mm along the flat piece from its start, which runs
/// counter-clockwise round the panel seen from the nap side.</summary>
public sealed record RuleStrip
{
    /// <summary>The part whose edge it is, by its place in the layout's list.</summary>
    public required int Part { get; init; }

    /// <summary>From 1, in the part.</summary>
    public required int Number { get; init; }

    /// <summary>Such pieces in one die.</summary>
    public required int Count { get; init; }

    /// <summary>Length of the middle line of the body when bent, as in the slot of the board, mm.</summary>
    public required double MiddleMm { get; init; }

    /// <summary>Length of the flat piece: of the neutral line of the bent body, mm; mitred ends are measured in the middle of the
    /// body.</summary>
    public required double BlankMm { get; init; }

    /// <summary>Cut of the start off square, degrees: half the bend of the corner, above 0 where the panel's corner points outwards; null
    /// for a square end.</summary>
    public required double? StartMitreDeg { get; init; }

    /// <summary>The same of the end.</summary>
    public required double? EndMitreDeg { get; init; }

    /// <summary>Bends in order.</summary>
    public required IReadOnlyList<RuleBend> Bends { get; init; }

    /// <summary>Notches over the bridges of the board, from and to.</summary>
    public required IReadOnlyList<(double FromMm, double ToMm)> Notches { get; init; }

    /// <summary>What all bends turn together, degrees, toward the panel positive.</summary>
    public double TurnDeg => Bends.Sum(b => b.TurnDeg);
}
