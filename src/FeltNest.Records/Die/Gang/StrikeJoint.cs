using FeltNest.Geometry;

namespace FeltNest.Die.Gang;

/// <summary>What stays between the cuts of two strikes.</summary>
/// <param name="NominalMm">Least gap between two strikes exactly in place, mm; infinite where strikes stand clear of each other.</param>
/// <param name="WorstMm">Least gap when feed and guide err as far as they may and both edges lie at the limit of their
/// tolerance, mm: 0 or less means that a strike can cut into the last one.</param>
/// <param name="FeedToleranceMm">Play of one feed to either side, mm.</param>
/// <param name="GuideToleranceMm">Play of the side guide to either side, mm.</param>
/// <param name="EdgeProfileMm">Profile tolerance of the edge, mm.</param>
/// <param name="Place">Where it is least, in the die's frame.</param>
public sealed record StrikeJoint(
    double NominalMm, double WorstMm, double FeedToleranceMm, double GuideToleranceMm, double EdgeProfileMm, Point2 Place)
{
    /// <summary>Least gap between strikes side by side, exactly in place, mm; infinite where one strike spans the band.</summary>
    public double AcrossMm { get; init; } = double.PositiveInfinity;

    /// <summary>The same with feed, guide and edges at their worst, mm.</summary>
    public double AcrossWorstMm { get; init; } = double.PositiveInfinity;

    /// <summary>Least room across to the cuts of the bands beside, mm: those are struck by other dies, at any place along; infinite for a
    /// layout of one band.</summary>
    public double BandMm { get; init; } = double.PositiveInfinity;

    /// <summary>The same with both guides and edges at their worst, mm.</summary>
    public double BandWorstMm => BandMm - (2 * GuideToleranceMm) - EdgeProfileMm;
}
