using FeltNest.Geometry;

namespace FeltNest.Die.Gang;

/// <summary>What stays between the cuts of two strikes.</summary>
public sealed record StrikeJoint
{
    /// <summary>Least gap between two strikes exactly in place, mm; infinite where strikes stand clear of each other.</summary>
    public required double NominalMm { get; init; }

    /// <summary>Least gap when feed and guide err as far as they may and both edges and places lie at the limit of their tolerance, mm:
    /// 0 or less means that a strike can cut into the last one.</summary>
    public required double WorstMm { get; init; }

    /// <summary>Play of one feed to either side, mm.</summary>
    public required double FeedToleranceMm { get; init; }

    /// <summary>Play of the side guide to either side, mm.</summary>
    public required double GuideToleranceMm { get; init; }

    /// <summary>Profile tolerance of the edge, mm.</summary>
    public required double EdgeProfileMm { get; init; }

    /// <summary>Position tolerance of the cavities, mm: two of them may stand so much nearer to each other. None for a die of one, whose
    /// strikes shift together.</summary>
    public required double PositionMm { get; init; }

    /// <summary>Where it is least, in the die's frame.</summary>
    public required Point2 Place { get; init; }

    /// <summary>Least gap between strikes side by side, exactly in place, mm; infinite where one strike spans the band.</summary>
    public double AcrossMm { get; init; } = double.PositiveInfinity;

    /// <summary>The same with feed, guide and edges at their worst, mm.</summary>
    public double AcrossWorstMm { get; init; } = double.PositiveInfinity;

    /// <summary>Least room across to the cuts of the bands beside, mm: those are struck by other dies, at any place along; infinite for a
    /// layout of one band.</summary>
    public double BandMm { get; init; } = double.PositiveInfinity;

    /// <summary>The same with both guides and edges at their worst, mm.</summary>
    public double BandWorstMm => BandMm - (2 * GuideToleranceMm) - EdgeProfileMm - PositionMm;
}
