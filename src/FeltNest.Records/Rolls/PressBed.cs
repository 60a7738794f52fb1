namespace FeltNest.Rolls;

/// <summary>Where a press can cut. Lengths in mm; x along the roll, y across it.</summary>
public readonly record struct PressBed
{
    /// <summary>Bed along the roll.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Bed across the roll.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Kept free of board along every side of the bed.</summary>
    public required double MarginMm { get; init; }

    /// <summary>Longest board along the roll, mm.</summary>
    public double BoardLengthMm => LengthMm - (2 * MarginMm);

    /// <summary>Widest board across the roll, mm.</summary>
    public double BoardWidthMm => WidthMm - (2 * MarginMm);
}
