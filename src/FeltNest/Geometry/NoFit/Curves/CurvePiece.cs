namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>A directed straight piece of closed curves that wind once more round what lies on their left than round what lies on their
/// right.</summary>
/// <param name="From">Start, mm.</param>
/// <param name="To">End, mm.</param>
/// <param name="Joins">False where a meeting of the two parts begins on the left (on the piece itself they only touch). True where a reflex
/// corner stands on an edge: two meetings on the left, and on the piece itself, are one on the right.</param>
internal readonly record struct CurvePiece(Point2 From, Point2 To, bool Joins = false);
