namespace FeltNest.Layout.Scan;

/// <summary>The least roll on which a kept die still cuts a number of rows.</summary>
/// <param name="Rows">Rows.</param>
/// <param name="LeastWidthMm">Least roll width, edge trims included, mm, exact but for rounding.</param>
/// <param name="PanelsPerMetre">Panels per metre of roll with these rows.</param>
public sealed record DropWidth(int Rows, double LeastWidthMm, double PanelsPerMetre);
