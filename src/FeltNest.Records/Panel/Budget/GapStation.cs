namespace FeltNest.Panel.Budget;

/// <summary>The gap at one place round the seam, with its spread.</summary>
internal sealed record GapStation
{
    /// <summary>Seam parameter of the place on the first panel, radians.</summary>
    public required double S { get; init; }

    /// <summary>Way round the seam to it from the waist, mm.</summary>
    public required double AlongMm { get; init; }

    /// <summary>Length of seam it stands for, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Gap with nothing off, mm; below 0 an overlap.</summary>
    public required double GapMm { get; init; }

    /// <summary>Least gap when every part is off by all of its tolerance, the way that closes it here, mm.</summary>
    public required double WorstLeastMm { get; init; }

    /// <summary>Greatest gap likewise, mm.</summary>
    public required double WorstMostMm { get; init; }

    /// <summary>Root of the sum of the squares of what each tolerance does, plus-minus mm.</summary>
    public required double RootSumSquareMm { get; init; }

    /// <summary>Share of balls whose gap lies within the adhesive's range here, %; null without a range.</summary>
    public required double? WithinPercent { get; init; }
}
