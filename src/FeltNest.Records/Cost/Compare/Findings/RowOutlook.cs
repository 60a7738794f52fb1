namespace FeltNest.Cost.Compare.Findings;

/// <summary>What a thousand balls of a row may cost.</summary>
public sealed record RowOutlook
{
    /// <summary>Name of the row.</summary>
    public required string Name { get; init; }

    /// <summary>In one case of twenty it costs less.</summary>
    public required double P5 { get; init; }

    /// <summary>In half of the cases it costs less.</summary>
    public required double P50 { get; init; }

    /// <summary>In one case of twenty it costs more.</summary>
    public required double P95 { get; init; }

    /// <summary>Its mean.</summary>
    public required double Mean { get; init; }

    /// <summary>Standard deviation.</summary>
    public required double Deviation { get; init; }

    /// <summary>Cost where every figure stands at its cheap end.</summary>
    public required double Least { get; init; }

    /// <summary>Cost where every figure stands at its dear end: the plain worst case.</summary>
    public required double Most { get; init; }

    /// <summary>In how many cases it is the cheapest, per cent.</summary>
    public required double CheapestPercent { get; init; }
}
