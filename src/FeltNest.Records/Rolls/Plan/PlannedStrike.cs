namespace FeltNest.Rolls.Plan;

/// <summary>One strike of a plan.</summary>
public sealed record PlannedStrike
{
    /// <summary>Where the strike's first cut edge stands along the roll, mm.</summary>
    public required double XMm { get; init; }

    /// <summary>How far the pattern is moved across from where the layout has it, mm.</summary>
    public required double ShiftYMm { get; init; }

    /// <summary>Panels without loss.</summary>
    public required int GoodPanels { get; init; }

    /// <summary>The others.</summary>
    public required IReadOnlyList<LostPanel> Lost { get; init; }
}
