namespace FeltNest.Cost.Charts;

/// <summary>A control chart whose limits follow from counting noise, or from the values' own spread from one to the next.</summary>
internal sealed record ControlChart
{
    /// <summary>Word for what it shows.</summary>
    public required string Name { get; init; }

    /// <summary>Kind.</summary>
    public required ChartKind Kind { get; init; }

    /// <summary>Unit of the values.</summary>
    public required string Unit { get; init; }

    /// <summary>The mean.</summary>
    public required double Centre { get; init; }

    /// <summary>Spread of the values against pure counting noise (Laney's sigma z); null where there is no counting.</summary>
    public double? SigmaZ { get; init; }

    /// <summary>Whether the limits are widened by it.</summary>
    public bool IsWidened { get; init; }

    /// <summary>The points.</summary>
    public required IReadOnlyList<ChartPoint> Points { get; init; }

    /// <summary>What a lasting change takes to be seen; null where the chart says nothing of it.</summary>
    public ChangeSeen? Change { get; init; }

    /// <summary>Points that pure noise alone is expected to put outside.</summary>
    public double ExpectedByNoise => Points.Sum(p => p.NoiseShare);
}
