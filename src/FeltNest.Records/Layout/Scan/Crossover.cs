namespace FeltNest.Layout.Scan;

/// <summary>A width at which, with a die designed anew for every width, the best number of rows changes.</summary>
/// <param name="WidthMm">Roll width, mm, to a tenth of a mm.</param>
/// <param name="RowsBelow">Best number of rows just below.</param>
/// <param name="RowsAbove">Best number just above.</param>
public sealed record Crossover(double WidthMm, int RowsBelow, int RowsAbove);
