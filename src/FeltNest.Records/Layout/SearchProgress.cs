namespace FeltNest.Layout;

/// <summary>How far a search has come.</summary>
public sealed record SearchProgress
{
    /// <summary>What it is doing, in words.</summary>
    public required string Stage { get; init; }

    /// <summary>Best layout so far, panels per metre; 0 before the first.</summary>
    public required double PanelsPerMetre { get; init; }

    /// <summary>Share of the counted work done, 0 to 1.</summary>
    public required double Share { get; init; }
}
