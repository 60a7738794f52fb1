using FeltNest.Geometry;

namespace FeltNest.Die.Edge;

/// <summary>The cutting edge of one cavity: the part's outline as few tangent arcs.</summary>
/// <param name="Arcs">The edge in the part's frame, counter-clockwise seen from the nap side.</param>
/// <param name="Corners">Places in the list of vertices where the edge has a corner that the part has too: the rule is mitred there.</param>
/// <param name="OffLayoutMm">Greatest distance measured between the edge and the outline of the layout, either way, mm.</param>
/// <param name="LayoutOffMm">How far the layout's outline may itself lie off the true one, mm: 0.01 for a computed panel, 0 for an outline that is the part.</param>
/// <param name="Mirrors">Axes of the part's frame in which the edge is its own mirror: x, y, both or none.</param>
/// <param name="HalfTurn">Whether a half-turn about the frame's origin leaves the edge the same.</param>
public sealed record DieEdge(ArcOutline Arcs, IReadOnlyList<int> Corners, double OffLayoutMm, double LayoutOffMm, EdgeMirrors Mirrors, bool HalfTurn)
{
    /// <summary>Most that the edge can lie off the true outline, mm.</summary>
    public double DeviationMm => OffLayoutMm + LayoutOffMm;

    /// <summary>The pieces in order, as arcs with centre and radius or straight (radius infinite).</summary>
    public IReadOnlyList<EdgePiece> Pieces => [.. Arcs.Vertices.Select((v, i) => EdgePiece.Of(v, Arcs.Vertices[(i + 1) % Arcs.Vertices.Count].Point))];
}
