using FeltNest.Geometry;

namespace FeltNest.Die.Edge;

/// <summary>The cutting edge of one cavity: the part's outline as few tangent arcs.</summary>
public sealed record DieEdge
{
    /// <summary>The edge in the part's frame, counter-clockwise seen from the nap side.</summary>
    public required ArcOutline Arcs { get; init; }

    /// <summary>Places in the list of vertices where the edge has a corner that the part has too: the rule is mitred there.</summary>
    public required IReadOnlyList<int> Corners { get; init; }

    /// <summary>Greatest distance measured between the edge and the outline of the layout, either way, mm.</summary>
    public required double OffLayoutMm { get; init; }

    /// <summary>How far the layout's outline may itself lie off the true one, mm: 0.01 for a computed panel, 0 for an outline that is
    /// the part.</summary>
    public required double LayoutOffMm { get; init; }

    /// <summary>Axes of the part's frame in which the edge is its own mirror: x, y, both or none.</summary>
    public required EdgeMirrors Mirrors { get; init; }

    /// <summary>Whether a half-turn about the frame's origin leaves the edge the same.</summary>
    public required bool HalfTurn { get; init; }

    /// <summary>Most that the edge can lie off the true outline, mm.</summary>
    public double DeviationMm => OffLayoutMm + LayoutOffMm;

    // A mitre sharper than this is not reckoned longer, degrees: no rule is mitred to a needle.
    private const double SharpestMitreDeg = 10;

    /// <summary>Length of a line all round that stands so far outside the edge, mm; at corners it goes on to the mitre.</summary>
    public double BesideMm(double outsideMm)
    {
        IReadOnlyList<EdgePiece> pieces = Pieces;
        double most = Math.Tan(double.DegreesToRadians(180 - SharpestMitreDeg) / 2);
        double turned = 0;
        for (int i = 0; i < pieces.Count; i++)
        {
            Point2 a = pieces[(i + pieces.Count - 1) % pieces.Count].Direction(1);
            Point2 b = pieces[i].Direction(0);
            double half = Math.Atan2(a.Cross(b), a.Dot(b)) / 2;
            turned += pieces[i].Turn + (2 * Math.Clamp(Math.Tan(half), -most, most));
        }

        return Arcs.Perimeter + (outsideMm * turned);
    }

    /// <summary>Corners too sharp for a mitre, with the angle that is left in the panel or in the waste, degrees.</summary>
    public IEnumerable<(Point2 At, double Deg)> Needles()
    {
        IReadOnlyList<EdgePiece> pieces = Pieces;
        foreach (int i in Corners)
        {
            Point2 a = pieces[(i + pieces.Count - 1) % pieces.Count].Direction(1);
            Point2 b = pieces[i].Direction(0);
            double left = 180 - double.RadiansToDegrees(Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b))));
            if (left < SharpestMitreDeg)
            {
                yield return (pieces[i].Start, left);
            }
        }
    }

    /// <summary>The pieces in order, as arcs with centre and radius or straight (radius infinite).</summary>
    public IReadOnlyList<EdgePiece> Pieces =>
        [.. Arcs.Vertices.Select((v, i) => EdgePiece.Of(v, Arcs.Vertices[(i + 1) % Arcs.Vertices.Count].Point))];
}
