using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace FeltNest.Geometry;

/// <summary>The one place where the sign of a turn is decided; correct also for nearly straight triples.</summary>
/// <remarks>Uses the double-double orientation test of NetTopologySuite (J. R. Shewchuk, <i>Adaptive precision floating-point arithmetic
/// and fast robust geometric predicates</i>, Discrete Comput. Geom. 18, 1997, is the idea it rests on).</remarks>
internal static class Predicates
{
    /// <summary>+1 when a, b, c turn left (counter-clockwise), -1 right, 0 exactly straight.</summary>
    public static int Turn(Point2 a, Point2 b, Point2 c) =>
        (int)Orientation.Index(new Coordinate(a.X, a.Y), new Coordinate(b.X, b.Y), new Coordinate(c.X, c.Y));
}
