using FeltNest.Drawing;
using FeltNest.Drawing.Strain;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Drawing;

public sealed class LevelRegionTests
{
    private static readonly Point2[] Square = [new(0, 0), new(1, 0), new(1, 1), new(0, 1)];
    private static readonly (int, int, int)[] Halves = [(0, 1, 2), (0, 2, 3)];

    [Fact]
    public void Nowhere_high_enough_gives_nothing() => Assert.Empty(LevelRegion.Rings(Square, [0, 1, 1, 0], Halves, 1.5));

    [Fact]
    public void Everywhere_high_enough_gives_the_whole_boundary_once()
    {
        Chain ring = Assert.Single(LevelRegion.Rings(Square, [0, 1, 1, 0], Halves, double.NegativeInfinity));

        Assert.Equal(4, ring.Vertices.Count);
        Assert.Equal(1, Area(ring), 12);
    }

    [Fact]
    public void A_slope_is_cut_where_it_passes_the_level()
    {
        Chain ring = Assert.Single(LevelRegion.Rings(Square, [0, 1, 1, 0], Halves, 0.25));

        Assert.Equal(0.75, Area(ring), 12);
        Assert.Equal(0.25, ring.Vertices.Min(v => v.X), 12);
    }

    [Fact]
    public void A_pit_leaves_a_hole_that_runs_the_other_way()
    {
        // A pyramid standing on its tip: value |x| + |y| at the corners of a diamond of radius 2 and 0 in its middle.
        Point2[] nodes = [new(0, 0), new(2, 0), new(0, 2), new(-2, 0), new(0, -2)];
        IReadOnlyList<Chain> rings = LevelRegion.Rings(nodes, [0, 2, 2, 2, 2], [(0, 1, 2), (0, 2, 3), (0, 3, 4), (0, 4, 1)], 1);

        // Diamond of area 8 less the diamond of radius 1, area 2.
        Assert.Equal([-2, 8], rings.Select(Area).Order().Select(area => Math.Round(area, 12)));
    }

    [Fact]
    public void A_level_through_a_node_is_no_trouble()
    {
        IReadOnlyList<Chain> rings = LevelRegion.Rings(Square, [0, 1, 2, 1], Halves, 1);

        Assert.Equal(0.5, rings.Sum(Area), 12);
    }

    private static double Area(Chain ring)
    {
        double twice = 0;
        for (int i = 0; i < ring.Vertices.Count; i++)
        {
            twice += ring.Vertices[i].Point.Cross(ring.Vertices[(i + 1) % ring.Vertices.Count].Point);
        }

        return twice / 2;
    }
}
