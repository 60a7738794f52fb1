namespace FeltNest.Cost.Sheet;

/// <summary>Two figures that go up and down together, or against each other.</summary>
public sealed record CostCorrelation
{
    /// <summary>Place of the one in the costs file, or <c>price of</c> and the name of an offer.</summary>
    public required string First { get; init; }

    /// <summary>The other.</summary>
    public required string Second { get; init; }

    /// <summary>Correlation of the normal variables behind them, -1 to 1.</summary>
    public required double R { get; init; }
}
