namespace FeltNest.Cost.Compare;

/// <summary>What a row cut with a die for each band saves against the best with one die.</summary>
/// <param name="Dies">Dies of the row.</param>
/// <param name="OneDiePanelsPerMetre">Panels per metre with one die.</param>
/// <param name="OneDieTotal">Cost of a thousand balls with one die, or null.</param>
/// <param name="PaysAfterThousandBalls">Thousand balls after which the further dies have saved their price; null where it is not known or
/// nothing is saved.</param>
public sealed record SecondDie(int Dies, double OneDiePanelsPerMetre, decimal? OneDieTotal, decimal? PaysAfterThousandBalls);
