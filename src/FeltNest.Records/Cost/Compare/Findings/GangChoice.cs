namespace FeltNest.Cost.Compare.Findings;

/// <summary>One die with a number of layers, weighed on the best row.</summary>
public sealed record GangChoice
{
    /// <summary>Most panels of one layer that the die cuts, as asked.</summary>
    public required int Cavities { get; init; }

    /// <summary>Layers under one strike.</summary>
    public required int Plies { get; init; }

    /// <summary>Panels a strike gives, all layers.</summary>
    public required double PanelsPerStrike { get; init; }

    /// <summary>Strikes for a thousand good balls.</summary>
    public required double StrikesPerThousandBalls { get; init; }

    /// <summary>Price of the die.</summary>
    public required decimal DiePrice { get; init; }

    /// <summary>Cost of a thousand balls without the die.</summary>
    public required decimal RunningCost { get; init; }

    /// <summary>Cost of a thousand balls, the die by its wear.</summary>
    public required decimal Total { get; init; }

    /// <summary>Thousand balls from which it is the cheapest of all to buy and run, the die paid once; null where it never
    /// is.</summary>
    public required decimal? PaysFromThousandBalls { get; init; }
}
