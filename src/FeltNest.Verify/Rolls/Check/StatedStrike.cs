namespace FeltNest.Rolls.Check;

/// <summary>A strike as a plan states it.</summary>
internal readonly record struct StatedStrike
{
    /// <summary>Where its first cut edge stands, mm.</summary>
    public required double XMm { get; init; }

    /// <summary>Move across, mm.</summary>
    public required double ShiftYMm { get; init; }

    /// <summary>Good panels.</summary>
    public required int GoodPanels { get; init; }

    /// <summary>Lost panels.</summary>
    public required int LostPanels { get; init; }
}
