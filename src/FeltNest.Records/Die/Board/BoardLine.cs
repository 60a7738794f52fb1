using FeltNest.Geometry;

namespace FeltNest.Die.Board;

/// <summary>A line that a laser follows.</summary>
/// <param name="Layer">Its layer.</param>
/// <param name="Line">Vertices, mm; the turn of the last one counts only where it is closed.</param>
/// <param name="Closed">Whether the last vertex is joined to the first.</param>
public sealed record BoardLine(string Layer, IReadOnlyList<ArcVertex> Line, bool Closed);
