namespace FeltNest.Panel.Lot;

/// <summary>The gap round the seam of one felt in one state, mm; below 0 an overlap.</summary>
internal sealed record LotGap
{
    /// <summary>Gap at each place that is met in every state.</summary>
    public required IReadOnlyList<double> AtMm { get; init; }

    /// <summary>Mean over the seam.</summary>
    public required double MeanMm { get; init; }

    /// <summary>Mean of the two waists; null where one is not met.</summary>
    public required double? WaistMm { get; init; }

    /// <summary>Mean of the two tips; null where one is not met.</summary>
    public required double? TipMm { get; init; }

    /// <summary>Least gap.</summary>
    public required double LeastMm { get; init; }

    /// <summary>Greatest gap.</summary>
    public required double GreatestMm { get; init; }

    /// <summary>Share of the seam outside the glue's range, per cent.</summary>
    public required double OutsidePercent { get; init; }
}
