using FeltNest.Die.SharedRule;
using FeltNest.Geometry;

namespace FeltNest.Die.Gang;

/// <summary>Cavities of one die and how it is struck.</summary>
public sealed record DieGang
{
    /// <summary>Band of the layout, from 0.</summary>
    public required int Band { get; init; }

    /// <summary>Cavities in the die's frame.</summary>
    public required IReadOnlyList<DieCavity> Cavities { get; init; }

    /// <summary>Repeats of the layout to one feed.</summary>
    public required int Repeats { get; init; }

    /// <summary>What the felt advances after the die was struck once at every place, mm.</summary>
    public required double FeedMm { get; init; }

    /// <summary>Moves of the die within one feed, mm along and across; the first is (0, 0), the only one where one strike cuts
    /// all.</summary>
    public required IReadOnlyList<Point2> Places { get; init; }

    /// <summary>Place of the die's origin over the roll at its first strike, mm.</summary>
    public required Point2 Origin { get; init; }

    /// <summary>Extent of the cut edges along the roll, mm.</summary>
    public required double EdgeLengthMm { get; init; }

    /// <summary>Extent across, mm.</summary>
    public required double EdgeWidthMm { get; init; }

    /// <summary>Board along the roll, mm.</summary>
    public required double BoardLengthMm { get; init; }

    /// <summary>Board across, mm.</summary>
    public required double BoardWidthMm { get; init; }

    /// <summary>Centre of the length of cutting edge in the die's frame, mm.</summary>
    public required Point2 LoadCentre { get; init; }

    /// <summary>Where the board's centre goes from the bed's centre so that the load is as central as the bed allows, mm.</summary>
    public required Point2 BoardCentreOnBed { get; init; }

    /// <summary>Cuts that neighbours share; none unless the shop asks for them.</summary>
    public required CommonCuts Common { get; init; }

    /// <summary>The load's centre from the bed's centre, mm.</summary>
    public Point2 LoadOffBed => LoadCentre - new Point2(BoardLengthMm / 2, BoardWidthMm / 2) + BoardCentreOnBed;
}
