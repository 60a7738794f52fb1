using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;
using NetTopologySuite.Operation.Valid;

namespace FeltNest.Geometry;

/// <summary>Set operations and validity of polygons: the one file of the geometry that stands on NetTopologySuite, so that the choice can be changed here alone.</summary>
public static class PolygonSets
{
    private static readonly GeometryFactory Factory = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, new PrecisionModel(), 0, GeometryOverlay.NG, new CoordinateEqualityComparer()).CreateGeometryFactory();

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
