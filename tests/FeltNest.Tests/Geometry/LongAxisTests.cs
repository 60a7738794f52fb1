using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Geometry;

public sealed class LongAxisTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(1.5)]
    [InlineData(-1.1)]
    public void A_rectangle_is_long_along_its_longer_side(double angle)
    {
        // Second moments of a rectangle a by b: a^3 b / 12 and a b^3 / 12, so the radii of gyration are as a to b.
        Point2 centre = new(7, -3);
        Point2[] corners = [.. new Point2[] { new(-5, -2), new(5, -2), new(5, 2), new(-5, 2) }.Select(p => p.Turned(angle) + centre)];

        LongAxis axis = LongAxis.Of(corners, centre);

        Assert.Equal(angle, axis.Angle, 1e-12);
        Assert.Equal(2.5, axis.Ratio, 1e-12);
    }

    [Fact]
    public void A_square_has_no_long_axis() =>
        Assert.Equal(1, LongAxis.Of([new(-1, -1), new(1, -1), new(1, 1), new(-1, 1)], default).Ratio, 1e-12);
}
