using FeltNest.Drawing.Charts;
using Xunit;

namespace FeltNest.Tests.Drawing;

public sealed class ChartAxisTests
{
    [Theory]
    [InlineData(new[] { 22.0, 34 }, 6, 22, 34, 2, "0")]
    [InlineData(new[] { 15.39, 15.71 }, 5, 15.3, 15.8, 0.1, "0.0")]
    [InlineData(new[] { 62.88, 63.06 }, 5, 62.85, 63.10, 0.05, "0.00")]
    [InlineData(new[] { 0.0, 1000 }, 5, 0, 1000, 200, "0")]
    [InlineData(new[] { -3.0, 3 }, 5, -4, 4, 2, "0")]
    public void Axes_end_on_round_steps_around_their_values(double[] values, int ticks, double low, double high, double step, string format)
    {
        ChartAxis axis = ChartAxis.Around(values, ticks);

        Assert.Equal((low, high, step), (Math.Round(axis.Low, 9), Math.Round(axis.High, 9), Math.Round(axis.Step, 9)));
        Assert.Equal(format, axis.Format);
        Assert.Equal(axis.High, axis.Ticks().Last(), 9);
    }

    [Fact]
    public void A_single_value_still_has_an_axis_around_it()
    {
        ChartAxis axis = ChartAxis.Around([300], 5);

        Assert.InRange(300, axis.Low, axis.High);
        Assert.True(axis.High > axis.Low);
    }
}
