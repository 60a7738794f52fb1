namespace FeltNest.Cost.Compare.Findings;

/// <summary>One die with a number of layers, weighed on the best row.</summary>
/// <param name="Cavities">Most panels of one layer that the die cuts, as asked.</param>
/// <param name="Plies">Layers under one strike.</param>
/// <param name="PanelsPerStrike">Panels a strike gives, all layers.</param>
/// <param name="StrikesPerThousandBalls">Strikes for a thousand good balls.</param>
/// <param name="DiePrice">Price of the die.</param>
/// <param name="RunningCost">Cost of a thousand balls without the die.</param>
/// <param name="Total">Cost of a thousand balls, the die by its wear.</param>
/// <param name="PaysFromThousandBalls">Thousand balls from which it is the cheapest of all to buy and run, the die paid once; null where it
/// never is.</param>
public sealed record GangChoice(
    int Cavities, int Plies, double PanelsPerStrike, double StrikesPerThousandBalls, decimal DiePrice, decimal RunningCost, decimal Total,
    decimal? PaysFromThousandBalls);
