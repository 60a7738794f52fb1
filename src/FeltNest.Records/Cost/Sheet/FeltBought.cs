namespace FeltNest.Cost.Sheet;

/// <summary>What is bought for a number of balls.</summary>
public sealed record FeltBought
{
    /// <summary>Good balls, thousands.</summary>
    public required double ThousandBalls { get; init; }

    /// <summary>Felt they need, m.</summary>
    public required double NeededM { get; init; }

    /// <summary>Felt bought, m: whole rolls, no less than the least length sold.</summary>
    public required double BoughtM { get; init; }

    /// <summary>Rolls bought, or null where the length of a roll is not known.</summary>
    public required double? Rolls { get; init; }

    /// <summary>Felt left over, m.</summary>
    public double SurplusM => BoughtM - NeededM;
}
