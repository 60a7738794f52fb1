using FeltNest.Geometry;
using FeltNest.Layout;
using NetTopologySuite.Geometries;

namespace FeltNest.Die.Check;

/// <summary>The outline of a panel at its place, as a polygon.</summary>
internal static class CutShape
{
    /// <summary>Maker of the shapes.</summary>
    public static readonly GeometryFactory Factory = new();

    /// <summary>The shape of a panel of a layout, or of a cavity that cuts one.</summary>
    public static Polygon Of(RollLayout layout, PlacedPanel placed)
    {
        double angle = placed.AngleDeg * Math.PI / 180;
        double cos = Math.Cos(angle);
        double sin = Math.Sin(angle);
        IReadOnlyList<Point2> points = layout.Parts[placed.Part].Outline.Points;
        return Factory.CreatePolygon([
            .. points
                .Append(points[0])
                .Select(p => new Coordinate(placed.XMm + (p.X * cos) - (p.Y * sin), placed.YMm + (p.X * sin) + (p.Y * cos))),
        ]);
    }
}
