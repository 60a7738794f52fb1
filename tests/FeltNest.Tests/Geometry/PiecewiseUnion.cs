using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;

namespace FeltNest.Tests.Geometry;

/// <summary>The plain way to a no-fit region: convex pieces of both parts, summed two by two, and the union of all sums. Slow; its union
/// has been seen to lose some area (about one in six thousand random parts), so a difference must be judged place by place.</summary>
internal static class PiecewiseUnion
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>Boundary of the region of two parts.</summary>
    internal static NetTopologySuite.Geometries.Geometry Of(Outline standing, Outline moving)
    {
        IReadOnlyList<Point2[]> a = ConvexPieces.Of(standing);
        IReadOnlyList<Point2[]> b = ConvexPieces.Of(moving);
        return Union(from first in a from second in b select ConvexSum.Of(first, second).Corners);
    }

    /// <summary>Union of polygons as rings: shells counter-clockwise, holes clockwise.</summary>
    internal static IReadOnlyList<Point2[]> Rings(IEnumerable<Point2[]> polygons)
    {
        NetTopologySuite.Geometries.Geometry union = Union(polygons);
        List<Point2[]> rings = [];
        for (int i = 0; i < union.NumGeometries; i++)
        {
            if (union.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                rings.Add(Ring(polygon.Shell, counterClockwise: true));
                rings.AddRange(polygon.Holes.Select(hole => Ring(hole, counterClockwise: false)));
            }
        }

        return rings;
    }

    /// <summary>A polygon of the union's library.</summary>
    internal static Polygon ToPolygon(IReadOnlyList<Point2> corners) =>
        Factory.CreatePolygon([.. corners.Append(corners[0]).Select(p => new Coordinate(p.X, p.Y))]);

    private static NetTopologySuite.Geometries.Geometry Union(IEnumerable<Point2[]> polygons) =>
        OverlayNGRobust.Union(Factory.BuildGeometry([.. polygons.Select(ToPolygon)]));

    private static Point2[] Ring(LinearRing ring, bool counterClockwise)
    {
        IEnumerable<Point2> points = ring.Coordinates.Take(ring.NumPoints - 1).Select(c => new Point2(c.X, c.Y));
        return ring.IsCCW == counterClockwise ? [.. points] : [.. points.Reverse()];
    }
}
