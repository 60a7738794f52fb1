namespace FeltNest.Panel.Budget;

/// <summary>The budget of the seam gap in one state of the felt: at fitting, or after the cure.</summary>
internal sealed record GapState
{
    /// <summary>The gap round the seam.</summary>
    public required IReadOnlyList<GapStation> Stations { get; init; }

    /// <summary>What each part does to it.</summary>
    public required IReadOnlyList<GapEffect> Effects { get; init; }

    /// <summary>The tolerances, the one to buy down first first.</summary>
    public required IReadOnlyList<GapShare> Shares { get; init; }

    /// <summary>How the least gap of a ball is spread.</summary>
    public required GapSpread Least { get; init; }

    /// <summary>How the greatest gap of a ball is spread.</summary>
    public required GapSpread Most { get; init; }

    /// <summary>Balls whose whole seam lies within the adhesive's range, %; null without a range.</summary>
    public required double? BallsWithinPercent { get; init; }

    /// <summary>Length of seam that lies within it, over all balls, %; null likewise.</summary>
    public required double? SeamWithinPercent { get; init; }

    /// <summary>Least gap anywhere with all parts off together the worst way, solved and not added up, mm; null where felt cannot be off so
    /// far together.</summary>
    public required double? SolvedLeastMm { get; init; }

    /// <summary>Greatest gap likewise, mm.</summary>
    public required double? SolvedMostMm { get; init; }

    /// <summary>Least gap with nothing off, mm.</summary>
    public double NominalLeastMm => Stations.Min(s => s.GapMm);

    /// <summary>Greatest gap with nothing off, mm.</summary>
    public double NominalMostMm => Stations.Max(s => s.GapMm);

    /// <summary>Least gap anywhere in the worst case, mm.</summary>
    public double WorstLeastMm => Stations.Min(s => s.WorstLeastMm);

    /// <summary>Greatest gap anywhere in the worst case, mm.</summary>
    public double WorstMostMm => Stations.Max(s => s.WorstMostMm);

    /// <summary>Least gap anywhere by the root sum square, mm.</summary>
    public double RootLeastMm => Stations.Min(s => s.GapMm - s.RootSumSquareMm);

    /// <summary>Greatest gap anywhere by the root sum square, mm.</summary>
    public double RootMostMm => Stations.Max(s => s.GapMm + s.RootSumSquareMm);
}
