namespace FeltNest.Cost.Sheet;

/// <summary>Two figures that go up and down together, or against each other.</summary>
/// <param name="First">Place of the one in the costs file, or <c>price of</c> and the name of an offer.</param>
/// <param name="Second">The other.</param>
/// <param name="R">Correlation of the normal variables behind them, -1 to 1.</param>
public sealed record CostCorrelation(string First, string Second, double R);
