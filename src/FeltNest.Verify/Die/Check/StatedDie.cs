using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Die.Check;

/// <summary>A die as its file states it.</summary>
internal sealed record StatedDie
{
    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Revision, or null.</summary>
    public required string? Revision { get; init; }

    /// <summary>Band of the layout, from 0.</summary>
    public required int Band { get; init; }

    /// <summary>Cavities in the die's frame.</summary>
    public required IReadOnlyList<PlacedPanel> Cavities { get; init; }

    /// <summary>Moves of the die within a feed.</summary>
    public required IReadOnlyList<Point2> Places { get; init; }

    /// <summary>Origin over the roll at the first strike.</summary>
    public required Point2 Origin { get; init; }

    /// <summary>Feed.</summary>
    public required double FeedMm { get; init; }

    /// <summary>Edge of each part by the part's place in the layout's list.</summary>
    public required IReadOnlyDictionary<int, ArcOutline> Edges { get; init; }

    /// <summary>Board along.</summary>
    public required double BoardLengthMm { get; init; }

    /// <summary>Board across.</summary>
    public required double BoardWidthMm { get; init; }

    /// <summary>Board promised outside the edges.</summary>
    public required double LandMm { get; init; }

    /// <summary>Length of rule: of the middle line of its body; of the cutting edge where the file does not tell the two
    /// apart.</summary>
    public required double RuleLengthMm { get; init; }

    /// <summary>Least radius.</summary>
    public required double LeastRadiusMm { get; init; }

    /// <summary>Least gap in the die, infinite for one cavity.</summary>
    public required double LeastGapMm { get; init; }

    /// <summary>Least gap between strikes, infinite where clear.</summary>
    public required double NominalJointMm { get; init; }

    /// <summary>The same at the worst feed and tolerance.</summary>
    public required double WorstJointMm { get; init; }

    /// <summary>Feed's tolerance.</summary>
    public required double FeedToleranceMm { get; init; }

    /// <summary>Guide's tolerance.</summary>
    public required double GuideToleranceMm { get; init; }

    /// <summary>Profile tolerance of the edge.</summary>
    public required double EdgeProfileMm { get; init; }

    /// <summary>Position tolerance of a cavity.</summary>
    public double PositionMm { get; init; }

    /// <summary>Force.</summary>
    public required double ForceKn { get; init; }

    /// <summary>What the force is worked out from.</summary>
    public required StatedForce Force { get; init; }

    /// <summary>Length of edge that two cavities share, by their places in the list of cavities, the earlier first; none where no cut
    /// is common.</summary>
    public required IReadOnlyDictionary<(int First, int Second), double> CommonCuts { get; init; }

    /// <summary>Length of cutting edge, mm; null in files that do not tell it apart from the rule's.</summary>
    public double? EdgeLengthMm { get; init; }

    /// <summary>How far the middle of the rule's body stands outside the cutting edge, mm.</summary>
    public double MiddleInWasteMm { get; init; }

    /// <summary>Body of the rule and where it stands near to itself; null in files that do not tell.</summary>
    public StatedOwnRule? Own { get; init; }

    /// <summary>The board for a laser; null where there is none.</summary>
    public StatedLaser? Laser { get; init; }

    /// <summary>Pieces of rule; null in files that do not tell.</summary>
    public IReadOnlyList<StatedStrip>? Strips { get; init; }

    /// <summary>How they are cut from stock, or null.</summary>
    public StatedStock? Stock { get; init; }

    /// <summary>Least gap between strikes side by side, mm; infinite where one strike spans the band.</summary>
    public double AcrossMm { get; init; } = double.PositiveInfinity;

    /// <summary>The same at its worst, mm.</summary>
    public double AcrossWorstMm { get; init; } = double.PositiveInfinity;

    /// <summary>Least room across to the bands beside, mm; infinite without any.</summary>
    public double BandMm { get; init; } = double.PositiveInfinity;

    /// <summary>The same at its worst, mm.</summary>
    public double BandWorstMm { get; init; } = double.PositiveInfinity;
}
