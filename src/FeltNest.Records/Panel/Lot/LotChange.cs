namespace FeltNest.Panel.Lot;

/// <summary>A figure of the felt before and in the new lot.</summary>
internal sealed record LotChange
{
    /// <summary>Path of the field in a ball file.</summary>
    public required string Field { get; init; }

    /// <summary>Figure of the felt before.</summary>
    public required double Before { get; init; }

    /// <summary>Figure of the new lot.</summary>
    public required double After { get; init; }

    /// <summary>What the interval of the new figure is worth in the mean gap after the cure, mm; null where the figure has no
    /// interval.</summary>
    public required double? MeanGapMm { get; init; }
}
