namespace FeltNest.Layout.Limits;

/// <summary>What one die can hold.</summary>
/// <param name="MostPanels">Most panels one strike cuts, or null for any number.</param>
/// <param name="BedLengthMm">Room for the cut edges along the roll, mm, or null for any.</param>
/// <param name="BedWidthMm">Room across the roll, mm, or null for any.</param>
public sealed record DieLimit(int? MostPanels, double? BedLengthMm, double? BedWidthMm);
