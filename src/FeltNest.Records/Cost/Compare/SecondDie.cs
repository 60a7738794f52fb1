namespace FeltNest.Cost.Compare;

/// <summary>What a row cut with a die for each band saves against the best with one die.</summary>
public sealed record SecondDie
{
    /// <summary>Dies of the row.</summary>
    public required int Dies { get; init; }

    /// <summary>Panels per metre with one die.</summary>
    public required double OneDiePanelsPerMetre { get; init; }

    /// <summary>Cost of a thousand balls with one die, or null.</summary>
    public required decimal? OneDieTotal { get; init; }

    /// <summary>Thousand balls after which the further dies have saved their price; null where it is not known or nothing is
    /// saved.</summary>
    public required decimal? PaysAfterThousandBalls { get; init; }
}
