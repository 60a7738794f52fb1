using FeltNest.Geometry;
using FeltNest.Rolls.Plan.Chain;
using NetTopologySuite.Geometries;
using Xunit;

namespace FeltNest.Tests.Rolls;

public sealed class LevelLineTests
{
    private static readonly GeometryFactory Factory = new();

    // A U, open above: a point between its arms is outside it.
    private static readonly Point2[] Cup = [new(0, 0), new(5, 0), new(5, 4), new(4, 4), new(4, 1), new(1, 1), new(1, 4), new(0, 4)];

    [Fact]
    public void Near_agrees_with_measured_distances_along_the_line()
    {
        Polygon cup = Shape();
        foreach ((double y, double distance) in new[] { (2.0, 0.3), (2.0, 0.0), (4.25, 0.3), (0.5, 1.0), (-0.9, 1.0), (4.8, 1.2) })
        {
            List<XRange> met = LevelLine.Near([Cup], y, distance);
            for (double x = -2.03; x < 8; x += 0.1)
            {
                Assert.Equal(
                    (x, y, cup.Distance(Factory.CreatePoint(new Coordinate(x, y))) <= distance),
                    (x, y, met.Exists(r => r.From <= x && x <= r.To)));
            }
        }
    }

    [Fact]
    public void Across_agrees_with_boxes_laid_on_the_shape()
    {
        Polygon cup = Shape();
        foreach ((double low, double high) in new[] { (1.5, 2.5), (0.2, 0.6), (3.0, 9.0), (2.0, 2.0), (-3.0, 7.0) })
        {
            List<XRange> met = LevelLine.Across(Cup, low, high);
            for (double x = -1.03; x < 7; x += 0.1)
            {
                NetTopologySuite.Geometries.Geometry box = Factory.ToGeometry(new Envelope(x, x, low, high));
                Assert.Equal((x, low, box.Intersects(cup)), (x, low, met.Exists(r => r.From <= x && x <= r.To)));
            }
        }
    }

    private static Polygon Shape() => Factory.CreatePolygon([.. Cup.Append(Cup[0]).Select(p => new Coordinate(p.X, p.Y))]);
}
