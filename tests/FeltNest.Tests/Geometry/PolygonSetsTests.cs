using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Geometry;

/// <summary>Offsets, triangles and remainders by hand.</summary>
public sealed class PolygonSetsTests
{
    private static readonly Point2[] Square = [new(0, 0), new(20, 0), new(20, 20), new(0, 20)];

    // A frame around a slit that opens to the right, 2 high: grown by more than 1 the slit closes and a hole is left.
    private static readonly Point2[] Pocket =
    [
        new(0, 0), new(30, 0), new(30, 14), new(22, 14), new(22, 8), new(8, 8), new(8, 22), new(22, 22), new(22, 16), new(30, 16),
        new(30, 30), new(0, 30),
    ];

    [Fact]
    public void A_grown_square_has_round_corners_and_a_shrunk_one_sharp_ones()
    {
        Point2[] grown = Assert.Single(PolygonSets.Offset(Square, 3));
        Assert.Equal(400 + (4 * 60) + (9 * Math.PI), Area(grown), 0.1);
        Assert.Equal((-3, 23), (grown.Min(p => p.X), grown.Max(p => p.Y)));
        Assert.Equal(14 * 14, Area(Assert.Single(PolygonSets.Offset(Square, -3))), 1e-9);
        Assert.Empty(PolygonSets.Offset(Square, -10.001));
    }

    [Fact]
    public void A_pocket_that_closes_is_a_hole_the_other_way_round()
    {
        double[] areas = [.. PolygonSets.Offset(Pocket, 1.5).Select(Area)];
        Assert.Equal(2, areas.Length);
        Assert.True(areas[0] > 900);

        // The chamber of 14 by 14 shrinks to 11 by 11; its mouth leaves a small dent.
        Assert.InRange(-areas[1], 11 * 11, (11 * 11) + 2);
    }

    [Fact]
    public void Triangles_fill_the_polygon_and_turn_left()
    {
        IReadOnlyList<Point2[]> triangles = PolygonSets.Triangles(Pocket);
        Assert.Equal(Pocket.Length - 2, triangles.Count);
        Assert.All(triangles, t => Assert.True(Area(t) > 0));
        Assert.Equal(900 - (14 * 14) - (2 * 8), triangles.Sum(Area), 1e-9);
    }

    [Fact]
    public void What_is_left_has_no_place_narrower_than_the_least()
    {
        // Out of the square goes its middle strip but for 2 mm on the left, which then are too narrow to stay.
        Point2[] strip = [new(2, 5), new(25, 5), new(25, 12), new(2, 12)];
        Assert.Equal((20 * 5) + (20 * 8) + (2 * 7), PolygonSets.Remainder(Square, [strip], 1).Sum(Area), 1.5);
        IReadOnlyList<Point2[]> left = PolygonSets.Remainder(Square, [strip], 3);
        Assert.Equal(2, left.Count);
        Assert.InRange(left.Sum(Area), (20 * 5) + (20 * 8) - 8, (20 * 5) + (20 * 8) + 4);
        Assert.Equal(400 - ((4 - Math.PI) * 0.25), PolygonSets.Remainder(Square, [], 1).Sum(Area), 0.01);
    }

    [Fact]
    public void A_boundary_that_crosses_itself_is_told_where()
    {
        Assert.Null(PolygonSets.FirstSelfContact(Square));
        Assert.Equal(new Point2(10, 10), PolygonSets.FirstSelfContact([new(0, 0), new(20, 20), new(20, 0), new(0, 20)]));
    }

    [Fact]
    public void A_simplified_polygon_keeps_within_its_tolerance()
    {
        Point2[] rough = [new(0, 0), new(10, 0.05), new(20, 0), new(20, 20), new(10, 20.2), new(0, 20)];
        Assert.Equal(5, PolygonSets.Simplified(rough, 0.1).Count);
        Assert.Equal(4, PolygonSets.Simplified(rough, 0.3).Count);
    }

    private static double Area(Point2[] ring) => ring.Select((p, i) => p.Cross(ring[(i + 1) % ring.Length])).Sum() / 2;
}
