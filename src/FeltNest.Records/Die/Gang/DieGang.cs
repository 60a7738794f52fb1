using FeltNest.Die.SharedRule;
using FeltNest.Geometry;

namespace FeltNest.Die.Gang;

/// <summary>Cavities of one die and how it is struck.</summary>
/// <param name="Band">Band of the layout, from 0.</param>
/// <param name="Cavities">Cavities in the die's frame.</param>
/// <param name="Repeats">Repeats of the layout to one feed.</param>
/// <param name="FeedMm">What the felt advances after the die was struck once at every place, mm.</param>
/// <param name="Places">Moves of the die within one feed, mm along and across; the first is (0, 0), the only one where one strike cuts
/// all.</param>
/// <param name="Origin">Place of the die's origin over the roll at its first strike, mm.</param>
/// <param name="EdgeLengthMm">Extent of the cut edges along the roll, mm.</param>
/// <param name="EdgeWidthMm">Extent across, mm.</param>
/// <param name="BoardLengthMm">Board along the roll, mm.</param>
/// <param name="BoardWidthMm">Board across, mm.</param>
/// <param name="LoadCentre">Centre of the length of cutting edge in the die's frame, mm.</param>
/// <param name="BoardCentreOnBed">Where the board's centre goes from the bed's centre so that the load is as central as the bed allows,
/// mm.</param>
/// <param name="Common">Cuts that neighbours share; none unless the shop asks for them.</param>
public sealed record DieGang(
    int Band, IReadOnlyList<DieCavity> Cavities, int Repeats, double FeedMm, IReadOnlyList<Point2> Places, Point2 Origin,
    double EdgeLengthMm, double EdgeWidthMm, double BoardLengthMm,
    double BoardWidthMm, Point2 LoadCentre, Point2 BoardCentreOnBed, CommonCuts Common)
{
    /// <summary>The load's centre from the bed's centre, mm.</summary>
    public Point2 LoadOffBed => LoadCentre - new Point2(BoardLengthMm / 2, BoardWidthMm / 2) + BoardCentreOnBed;
}
