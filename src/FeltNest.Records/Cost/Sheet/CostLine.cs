namespace FeltNest.Cost.Sheet;

/// <summary>One line of the cost sheet, per thousand good balls.</summary>
/// <param name="Number">Its number, 1 to 19.</param>
/// <param name="Name">What it is.</param>
/// <param name="Quantity">Its quantity, or null.</param>
/// <param name="Unit">Unit of the quantity.</param>
/// <param name="Amount">Its money, or null where the line has none or the figure was not given.</param>
public sealed record CostLine(int Number, string Name, double? Quantity, string Unit, decimal? Amount);
