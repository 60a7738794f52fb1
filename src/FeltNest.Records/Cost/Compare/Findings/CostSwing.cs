namespace FeltNest.Cost.Compare.Findings;

/// <summary>What a figure that may be off does to the cost of the best row, all others as they are.</summary>
public sealed record CostSwing
{
    /// <summary>What it is, with its unit.</summary>
    public required string Assumption { get; init; }

    /// <summary>Its least value.</summary>
    public required double Low { get; init; }

    /// <summary>Its likely value.</summary>
    public required double Likely { get; init; }

    /// <summary>Its greatest value.</summary>
    public required double High { get; init; }

    /// <summary>Cost of a thousand balls of the best row at the least value.</summary>
    public required decimal TotalAtLow { get; init; }

    /// <summary>The same at the greatest value.</summary>
    public required decimal TotalAtHigh { get; init; }

    /// <summary>Row that is the cheapest at the least value.</summary>
    public required string BestAtLow { get; init; }

    /// <summary>Row that is the cheapest at the greatest value.</summary>
    public required string BestAtHigh { get; init; }

    /// <summary>How far the total goes.</summary>
    public decimal Span => Math.Abs(TotalAtHigh - TotalAtLow);
}
