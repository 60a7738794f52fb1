namespace FeltNest.Layout.Limits;

/// <summary>What one die can hold.</summary>
/// <param name="MostPanels">Most panels one strike cuts, or null for any number.</param>
/// <param name="BedLengthMm">Room for the cut edges along the roll, mm, or null for any.</param>
/// <param name="BedWidthMm">Room across the roll, mm, or null for any.</param>
public sealed record DieLimit(int? MostPanels, double? BedLengthMm, double? BedWidthMm)
{
    // A panel stood upright is a hair longer than it is: rounding of the turn, mm.
    private const double Rounding = 1e-7;

    /// <summary>True when the bed has room for cut edges of this extent.</summary>
    internal bool Holds(double lengthMm, double widthMm) =>
        lengthMm <= (BedLengthMm ?? double.PositiveInfinity) + Rounding && widthMm <= (BedWidthMm ?? double.PositiveInfinity) + Rounding;
}
