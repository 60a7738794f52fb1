namespace FeltNest.Rolls.Plan;

/// <summary>What a layout made for the roll as measured would give more than the one planned with.</summary>
public sealed record BetterLayout
{
    /// <summary>Width it is made for, mm: the least of the felt to be cut.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Good panels of the strikes planned with it.</summary>
    public required int GoodPanels { get; init; }

    /// <summary>How many more these are, per cent of those planned.</summary>
    public required double GainPercent { get; init; }
}
