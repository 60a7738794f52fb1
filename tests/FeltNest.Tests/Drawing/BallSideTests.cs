using CsCheck;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Drawing;

/// <summary>Lines on a ball in parallel projection.</summary>
public sealed class BallSideTests
{
    private static readonly BallSide Above = new(new SpherePoint(0, 0, 2), new SpherePoint(3, 0, 0));

    // The circle x = c on a ball of radius 5 stands upright: it is seen as a straight line, near above it and far below it.
    [Fact]
    public void A_circle_through_the_rim_is_seen_as_its_near_and_its_far_half() => Gen.Double[-0.9, 0.9].Sample(c =>
    {
        SpherePoint[] circle = [.. Enumerable.Range(0, 64).Select(i => On(c, ((2 * Math.PI) * i / 64) + 0.02))];
        foreach (bool near in new[] { true, false })
        {
            Point2[] line = Assert.Single(Above.Lines(circle, near));
            Assert.All(line, p => Assert.Equal(5 * c, p.X, 0.05));
            Assert.Equal(5, line[0].Length, 9);
            Assert.Equal(5, line[^1].Length, 9);
            Assert.Equal(2 * 5 * Math.Sqrt(1 - (c * c)), (line[^1] - line[0]).Length, 0.05);
        }
    });

    [Theory]
    [InlineData(0.5, true)]
    [InlineData(-0.5, false)]
    public void A_circle_on_one_half_is_one_closed_line_of_that_half(double height, bool near)
    {
        double radius = Math.Sqrt(1 - (height * height));
        SpherePoint[] circle = [.. Enumerable.Range(0, 12).Select(i => Math.SinCos(Math.PI * i / 6)).Select(t =>
            new SpherePoint(radius * t.Cos, radius * t.Sin, height))];

        Assert.Empty(Above.Lines(circle, !near));
        Point2[] line = Assert.Single(Above.Lines(circle, near));
        Assert.Equal((13, line[0]), (line.Length, line[^1]));
    }

    private static SpherePoint On(double c, double angle)
    {
        double radius = Math.Sqrt(1 - (c * c));
        return 5 * new SpherePoint(c, radius * Math.Cos(angle), radius * Math.Sin(angle));
    }
}
