namespace FeltNest.Cost.Charts;

/// <summary>A point of a control chart.</summary>
internal sealed record ChartPoint
{
    /// <summary>Day, ticket, roll, press.</summary>
    public required string Name { get; init; }

    /// <summary>What was counted; the value itself for single values.</summary>
    public required double Count { get; init; }

    /// <summary>Of how many, or of which length; 1 for single values.</summary>
    public required double Size { get; init; }

    /// <summary>What the chart shows.</summary>
    public required double Value { get; init; }

    /// <summary>Lower limit.</summary>
    public required double Low { get; init; }

    /// <summary>Upper limit.</summary>
    public required double High { get; init; }

    /// <summary>Share of such points that pure noise alone puts outside the limits.</summary>
    public required double NoiseShare { get; init; }

    /// <summary>Whether it is a cause; else noise.</summary>
    public bool IsCause => Value < Low || Value > High;
}
