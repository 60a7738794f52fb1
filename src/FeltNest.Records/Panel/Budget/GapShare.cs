namespace FeltNest.Panel.Budget;

/// <summary>What one tolerance has to do with the spread of the gap in one state of the felt.</summary>
internal sealed record GapShare
{
    /// <summary>Index of the tolerance.</summary>
    public required int Source { get; init; }

    /// <summary>Greatest change of the gap anywhere from the middle to an end of the tolerance, mm.</summary>
    public required double GreatestMm { get; init; }

    /// <summary>Greatest part of it that is the same at both ends, mm: what a straight line leaves out.</summary>
    public required double BendMm { get; init; }

    /// <summary>Share of the variance of the gap, mean over the seam's length, %.</summary>
    public required double VariancePercent { get; init; }

    /// <summary>Share of balls within the adhesive's range that is won when the tolerance is halved, points of per cent; null without a
    /// range.</summary>
    public required double? GainPercent { get; init; }

    /// <summary>Standard error of the gain: so many balls are counted and no more; null without a range.</summary>
    public required double? GainErrorPercent { get; init; }

    /// <summary>Place in the order in which tolerances are to be bought down, 1 first.</summary>
    public required int Rank { get; init; }
}
