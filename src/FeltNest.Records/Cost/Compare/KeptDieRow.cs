namespace FeltNest.Cost.Compare;

/// <summary>A kept die on one width.</summary>
public sealed record KeptDieRow
{
    /// <summary>Rows of it that fit.</summary>
    public required int Rows { get; init; }

    /// <summary>Panels per metre they give.</summary>
    public required double PanelsPerMetre { get; init; }

    /// <summary>Felt bought per thousand good balls, m2.</summary>
    public required double SquareMetresPerThousandBalls { get; init; }

    /// <summary>Cost of a thousand balls, or null.</summary>
    public required decimal? Total { get; init; }

    /// <summary>The same without the wear of the die, or null.</summary>
    public required decimal? RunningCost { get; init; }

    /// <summary>Thousand balls after which the new lay has saved the price of its die; null where that price is not known or nothing is
    /// saved.</summary>
    public required decimal? NewDiePaysAfterThousandBalls { get; init; }
}
