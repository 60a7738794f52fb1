namespace FeltNest.Cost.Compare.Findings;

/// <summary>What all figures that may be off, taken together, make of the costs: the layouts as they are taken.</summary>
public sealed record CostOutlook
{
    /// <summary>Sets of figures that were drawn.</summary>
    public required int Samples { get; init; }

    /// <summary>What each row may cost, in the order of the rows.</summary>
    public required IReadOnlyList<RowOutlook> Rows { get; init; }

    /// <summary>Which figures the spread of the best row's cost comes from, the greatest share first.</summary>
    public required IReadOnlyList<SpreadShare> Shares { get; init; }
}
