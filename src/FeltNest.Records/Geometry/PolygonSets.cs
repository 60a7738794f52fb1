using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Valid;
using NetTopologySuite.Simplify;
using NetTopologySuite.Triangulate.Polygon;

namespace FeltNest.Geometry;

/// <summary>Offsets, triangles and validity of polygons: the one file of the geometry that stands on NetTopologySuite, so that the choice
/// can be changed here alone.</summary>
internal static class PolygonSets
{
    private static readonly GeometryFactory Factory = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, new PrecisionModel(), 0, GeometryOverlay.NG, new CoordinateEqualityComparer())
            .CreateGeometryFactory();

    /// <summary>A place where the closed boundary crosses or touches itself, or null for a simple one.</summary>
    public static Point2? FirstSelfContact(IReadOnlyList<Point2> corners)
    {
        IsValidOp test = new(ToPolygon(corners));
        if (test.IsValid)
        {
            return null;
        }

        Coordinate? at = test.ValidationError?.Coordinate;
        return at is null ? corners[0] : new Point2(at.X, at.Y);
    }

    /// <summary>Triangles that fill a simple polygon, counter-clockwise, using its corners alone.</summary>
    public static IReadOnlyList<Point2[]> Triangles(IReadOnlyList<Point2> corners)
    {
        NetTopologySuite.Geometries.Geometry parts = PolygonTriangulator.Triangulate(ToPolygon(corners));
        List<Point2[]> triangles = [];
        for (int i = 0; i < parts.NumGeometries; i++)
        {
            Coordinate[] ring = parts.GetGeometryN(i).Coordinates;
            Point2 a = new(ring[0].X, ring[0].Y);
            Point2 b = new(ring[1].X, ring[1].Y);
            Point2 c = new(ring[2].X, ring[2].Y);
            int turn = Predicates.Turn(a, b, c);
            if (turn != 0)
            {
                triangles.Add(turn > 0 ? [a, b, c] : [a, c, b]);
            }
        }

        return triangles;
    }

    /// <summary>A simple polygon grown (distance positive) or shrunk, corners rounded, as rings: shells counter-clockwise, holes
    /// clockwise.</summary>
    /// <remarks>No simplification: the library's default drops points within 1 % of the distance.</remarks>
    public static IReadOnlyList<Point2[]> Offset(IReadOnlyList<Point2> corners, double distance)
    {
        BufferParameters rules = new(16) { SimplifyFactor = 0 };
        return Rings(BufferOp.Buffer(ToPolygon(corners), distance, rules));
    }

    /// <summary>What is left of a polygon when others are taken out, as rings: shells counter-clockwise, holes clockwise. Places narrower
    /// than <paramref name="least"/> mm are left out, corners rounded to half of it.</summary>
    public static IReadOnlyList<Point2[]> Remainder(IReadOnlyList<Point2> whole, IReadOnlyList<IReadOnlyList<Point2>> taken, double least)
    {
        BufferParameters rules = new(8) { SimplifyFactor = 0 };
        NetTopologySuite.Geometries.Geometry left =
            taken.Count == 0 ? ToPolygon(whole) : ToPolygon(whole).Difference(Factory.BuildGeometry([.. taken.Select(ToPolygon)]).Union());
        return Rings(BufferOp.Buffer(BufferOp.Buffer(left, -least / 2, rules), least / 2, rules));
    }

    /// <summary>The band to both sides of a line, ends square, corners mitred, counter-clockwise.</summary>
    public static Point2[] Band(IReadOnlyList<Point2> line, double halfWidth)
    {
        BufferParameters rules = new(8, EndCapStyle.Flat, JoinStyle.Mitre, 10) { SimplifyFactor = 0 };
        LineString middle = Factory.CreateLineString([.. line.Select(p => new Coordinate(p.X, p.Y))]);
        return Rings(BufferOp.Buffer(middle, halfWidth, rules))[0];
    }

    /// <summary>Pieces with their holes, those that are longer or wider than a size parted into what is not: each as its shell and its
    /// holes.</summary>
    /// <param name="rings">Shells counter-clockwise, each followed by its holes clockwise.</param>
    /// <param name="length">Most along x.</param>
    /// <param name="width">Most along y.</param>
    public static IEnumerable<IReadOnlyList<Point2[]>> Parted(IReadOnlyList<IReadOnlyList<Point2>> rings, double length, double width)
    {
        foreach (Polygon piece in Pieces(rings))
        {
            Envelope box = piece.EnvelopeInternal;
            int across = (int)Math.Ceiling(box.Width / length);
            int up = (int)Math.Ceiling(box.Height / width);
            for (int i = 0; i < across * up; i++)
            {
                (double wide, double high) = (box.Width / across, box.Height / up);
                (double x, double y) = (box.MinX + (i % across * wide), box.MinY + (i / across * high));
                NetTopologySuite.Geometries.Geometry part = across * up == 1
                    ? piece
                    : piece.Intersection(Factory.ToGeometry(new Envelope(x, x + wide, y, y + high)));
                for (int k = 0; k < part.NumGeometries; k++)
                {
                    if (part.GetGeometryN(k) is Polygon { IsEmpty: false } whole)
                    {
                        yield return Rings(whole);
                    }
                }
            }
        }
    }

    private static IEnumerable<Polygon> Pieces(IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        LinearRing[] all = [.. rings.Select(r => (LinearRing)ToPolygon(r).ExteriorRing)];
        for (int i = 0; i < all.Length;)
        {
            int next = i + 1;
            while (next < all.Length && !all[next].IsCCW)
            {
                next++;
            }

            yield return Factory.CreatePolygon(all[i], all[(i + 1)..next]);
            i = next;
        }
    }

    /// <summary>The polygon with fewer corners, nowhere further than <paramref name="tolerance"/> mm from the given one, still
    /// simple.</summary>
    public static IReadOnlyList<Point2> Simplified(IReadOnlyList<Point2> corners, double tolerance) =>
        Rings(TopologyPreservingSimplifier.Simplify(ToPolygon(corners), tolerance))[0];

    private static List<Point2[]> Rings(NetTopologySuite.Geometries.Geometry geometry)
    {
        List<Point2[]> rings = [];
        for (int i = 0; i < geometry.NumGeometries; i++)
        {
            if (geometry.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                rings.Add(Ring(polygon.Shell, counterClockwise: true));
                rings.AddRange(polygon.Holes.Select(hole => Ring(hole, counterClockwise: false)));
            }
        }

        return rings;
    }

    private static Point2[] Ring(LinearRing ring, bool counterClockwise)
    {
        IEnumerable<Point2> points = ring.Coordinates.Take(ring.NumPoints - 1).Select(c => new Point2(c.X, c.Y));
        return ring.IsCCW == counterClockwise ? [.. points] : [.. points.Reverse()];
    }

    private static Polygon ToPolygon(IReadOnlyList<Point2> corners)
    {
        Coordinate[] ring = new Coordinate[corners.Count + 1];
        for (int i = 0; i < corners.Count; i++)
        {
            ring[i] = new Coordinate(corners[i].X, corners[i].Y);
        }

        ring[^1] = ring[0].Copy();
        return Factory.CreatePolygon(ring);
    }
}
