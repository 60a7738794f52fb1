namespace FeltNest.Layout.Limits;

/// <summary>What one die can hold.</summary>
public sealed record DieLimit
{
    /// <summary>Most panels one strike cuts, or null for any number.</summary>
    public required int? MostPanels { get; init; }

    /// <summary>Room for the cut edges along the roll, mm, or null for any.</summary>
    public required double? BedLengthMm { get; init; }

    /// <summary>Room across the roll, mm, or null for any.</summary>
    public required double? BedWidthMm { get; init; }

    // A panel stood upright is a hair longer than it is: rounding of the turn, mm.
    private const double Rounding = 1e-7;

    /// <summary>True when the bed has room for cut edges of this extent.</summary>
    internal bool Holds(double lengthMm, double widthMm) =>
        lengthMm <= (BedLengthMm ?? double.PositiveInfinity) + Rounding && widthMm <= (BedWidthMm ?? double.PositiveInfinity) + Rounding;
}
