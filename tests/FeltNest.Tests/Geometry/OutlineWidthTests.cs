using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Geometry;

/// <summary>Least extents by hand and against all tilts of a fine grid.</summary>
public sealed class OutlineWidthTests
{
    [Fact]
    public void A_free_triangle_lies_on_its_longest_side()
    {
        // Sides 3, 4 and 5: twice the area over the longest side is 2.4. Turned so that the side from (3, 0) to (0, 4) is level.
        (double height, double tilt) = OutlineWidth.Least(Outline.From([new(0, 0), new(3, 0), new(0, 4)]), 0, Math.PI);
        Assert.Equal(2.4, height, 1e-12);
        Assert.Equal(Math.Atan2(4, 3), tilt, 1e-12);
    }

    [Fact]
    public void A_notch_changes_nothing() =>
        Assert.Equal(
            2, OutlineWidth.Least(Outline.From([new(0, 0), new(2, 0), new(2, 3), new(1, 1), new(0, 3)]), 0, Math.PI).Height, 1e-12);

    [Theory]
    [InlineData(10, 80, 10)]
    [InlineData(100, 170, 170)]
    [InlineData(100, 190, 180)]
    [InlineData(-30, 20, 0)]
    [InlineData(70, 70, 70)]
    public void Within_a_range_the_least_is_at_an_end_or_where_a_side_lies_level(double least, double most, double tilt)
    {
        // A bar of 30 by 10 is 30 |sin t| + 10 |cos t| high, least at 0 and 180 degrees.
        (double height, double at) = OutlineWidth.Least(
            Outline.From([new(0, 0), new(30, 0), new(30, 10), new(0, 10)]), double.DegreesToRadians(least), double.DegreesToRadians(most));
        double expected = double.DegreesToRadians(tilt);
        Assert.Equal((30 * Math.Abs(Math.Sin(expected))) + (10 * Math.Abs(Math.Cos(expected))), height, 1e-9);
        Assert.Equal(expected, at, 1e-9);
    }

    [Fact]
    public void No_tilt_of_a_grid_is_flatter()
    {
        for (int seed = 0; seed < 60; seed++)
        {
            Random random = new(seed);
            Outline part = RandomOutlines.Next(random, seed % RandomOutlines.Kinds, 12);
            double from = 6 * (random.NextDouble() - 0.5);
            double to = seed % 3 == 0 ? from + Math.PI : from + (3 * random.NextDouble());
            double height = OutlineWidth.Least(part, from, to).Height;
            double grid = Enumerable.Range(0, 401).Min(i => Height(part.Turned(from + ((to - from) * i / 400))));
            Assert.InRange(height, grid * 0.97, grid * (1 + 1e-12));
        }

        static double Height(Outline outline) => outline.MaxY - outline.MinY;
    }
}
