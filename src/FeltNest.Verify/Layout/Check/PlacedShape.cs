using FeltNest.Geometry;
using NetTopologySuite.Geometries;

namespace FeltNest.Layout.Check;

/// <summary>An outline at its place, as a polygon; own arithmetic, apart from the geometry stage's.</summary>
internal static class PlacedShape
{
    /// <summary>Maker of the shapes.</summary>
    public static readonly GeometryFactory Factory = new();

    /// <summary>A panel of a layout, or a cavity that cuts one, at its place.</summary>
    public static Polygon Of(RollLayout layout, PlacedPanel placed) =>
        Of(layout.Parts[placed.Part].Outline, placed.XMm, placed.YMm, placed.AngleDeg);

    /// <summary>The outline turned about its origin, degrees counter-clockwise, then moved, mm.</summary>
    public static Polygon Of(Outline outline, double x, double y, double angleDeg)
    {
        double angle = angleDeg * Math.PI / 180;
        double cos = Math.Cos(angle);
        double sin = Math.Sin(angle);
        Coordinate[] ring = new Coordinate[outline.Points.Count + 1];
        for (int i = 0; i < ring.Length - 1; i++)
        {
            Point2 p = outline.Points[i];
            ring[i] = new Coordinate(x + (p.X * cos) - (p.Y * sin), y + (p.X * sin) + (p.Y * cos));
        }

        ring[^1] = ring[0].Copy();
        return Factory.CreatePolygon(ring);
    }
}
