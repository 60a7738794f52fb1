namespace FeltNest.Cost.Usage;

/// <summary>Why felt was used beside the standard.</summary>
internal enum UsageCause
{
    /// <summary>The roll was wider than the layout needs, or so narrow that rows of it fell off.</summary>
    Width,

    /// <summary>Strikes skipped or fed too far, and whatever else was not recorded.</summary>
    Lay,

    /// <summary>Roll ends and remnants.</summary>
    RollEnds,

    /// <summary>Faults of the cloth.</summary>
    Faults,

    /// <summary>Rejects after cutting.</summary>
    Rejects,

    /// <summary>Good panels without a partner.</summary>
    Unpaired,

    /// <summary>The price paid.</summary>
    Price,
}
