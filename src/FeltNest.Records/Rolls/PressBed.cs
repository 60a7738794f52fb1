namespace FeltNest.Rolls;

/// <summary>Where a press can cut. Lengths in mm; x along the roll, y across it.</summary>
/// <param name="LengthMm">Bed along the roll.</param>
/// <param name="WidthMm">Bed across the roll.</param>
/// <param name="MarginMm">Kept free of board along every side of the bed.</param>
public readonly record struct PressBed(double LengthMm, double WidthMm, double MarginMm)
{
    /// <summary>Longest board along the roll, mm.</summary>
    public double BoardLengthMm => LengthMm - (2 * MarginMm);

    /// <summary>Widest board across the roll, mm.</summary>
    public double BoardWidthMm => WidthMm - (2 * MarginMm);
}
