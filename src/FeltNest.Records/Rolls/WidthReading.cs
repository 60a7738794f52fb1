namespace FeltNest.Rolls;

/// <summary>The width of a roll measured at one place.</summary>
/// <param name="XMm">Along the roll, mm.</param>
/// <param name="WidthMm">Both selvedges included, mm.</param>
public readonly record struct WidthReading(double XMm, double WidthMm);
