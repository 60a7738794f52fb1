using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Die.Check;

/// <summary>A die as its file states it.</summary>
/// <param name="Name">Name.</param>
/// <param name="Revision">Revision, or null.</param>
/// <param name="Band">Band of the layout, from 0.</param>
/// <param name="Cavities">Cavities in the die's frame.</param>
/// <param name="Places">Moves of the die within a feed.</param>
/// <param name="Origin">Origin over the roll at the first strike.</param>
/// <param name="FeedMm">Feed.</param>
/// <param name="Edges">Edge of each part by the part's place in the layout's list.</param>
/// <param name="BoardLengthMm">Board along.</param>
/// <param name="BoardWidthMm">Board across.</param>
/// <param name="LandMm">Board promised outside the edges.</param>
/// <param name="RuleLengthMm">Length of rule: of the middle line of its body; of the cutting edge where the file does not tell the two
/// apart.</param>
/// <param name="LeastRadiusMm">Least radius.</param>
/// <param name="LeastGapMm">Least gap in the die, infinite for one cavity.</param>
/// <param name="NominalJointMm">Least gap between strikes, infinite where clear.</param>
/// <param name="WorstJointMm">The same at the worst feed and tolerance.</param>
/// <param name="FeedToleranceMm">Feed's tolerance.</param>
/// <param name="GuideToleranceMm">Guide's tolerance.</param>
/// <param name="EdgeProfileMm">Profile tolerance of the edge.</param>
/// <param name="ForceKn">Force.</param>
/// <param name="ForceFactors">Force recomputed from the figures beside it, kN.</param>
/// <param name="ForceLengthMm">Length of cutting edge the force is worked out from.</param>
/// <param name="CommonCuts">Length of edge that two cavities share, by their places in the list of cavities, the earlier first; none where
/// no cut is common.</param>
public sealed record StatedDie(
    string Name, string? Revision, int Band, IReadOnlyList<PlacedPanel> Cavities, IReadOnlyList<Point2> Places, Point2 Origin,
    double FeedMm, IReadOnlyDictionary<int, ArcOutline> Edges,
    double BoardLengthMm, double BoardWidthMm, double LandMm, double RuleLengthMm, double LeastRadiusMm, double LeastGapMm,
    double NominalJointMm, double WorstJointMm, double FeedToleranceMm,
    double GuideToleranceMm, double EdgeProfileMm, double ForceKn, double ForceFactors, double ForceLengthMm,
    IReadOnlyDictionary<(int First, int Second), double> CommonCuts)
{
    /// <summary>Length of cutting edge, mm; null in files that do not tell it apart from the rule's.</summary>
    public double? EdgeLengthMm { get; init; }

    /// <summary>How far the middle of the rule's body stands outside the cutting edge, mm.</summary>
    public double MiddleInWasteMm { get; init; }

    /// <summary>Least gap between strikes side by side, mm; infinite where one strike spans the band.</summary>
    public double AcrossMm { get; init; } = double.PositiveInfinity;

    /// <summary>The same at its worst, mm.</summary>
    public double AcrossWorstMm { get; init; } = double.PositiveInfinity;

    /// <summary>Least room across to the bands beside, mm; infinite without any.</summary>
    public double BandMm { get; init; } = double.PositiveInfinity;

    /// <summary>The same at its worst, mm.</summary>
    public double BandWorstMm { get; init; } = double.PositiveInfinity;
}
