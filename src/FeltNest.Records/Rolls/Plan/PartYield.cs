namespace FeltNest.Rolls.Plan;

/// <summary>What the strikes of a roll give of one part.</summary>
public readonly record struct PartYield
{
    /// <summary>Index into the layout's parts.</summary>
    public required int Part { get; init; }

    /// <summary>Good panels.</summary>
    public required int GoodPanels { get; init; }

    /// <summary>Balls they cover: pairs of one pairing group.</summary>
    public required int Balls { get; init; }
}
