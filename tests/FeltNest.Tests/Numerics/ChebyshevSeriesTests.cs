using FeltNest.Numerics;
using Xunit;

namespace FeltNest.Tests.Numerics;

public sealed class ChebyshevSeriesTests
{
    [Theory]
    [InlineData(-1)]
    [InlineData(-0.3)]
    [InlineData(0)]
    [InlineData(0.77)]
    [InlineData(1)]
    public void A_smooth_function_and_its_slope_come_back(double x)
    {
        ChebyshevSeries series = ChebyshevSeries.Through([.. ChebyshevSeries.Nodes(30).Select(t => Math.Exp(t) * Math.Sin(3 * t))]);

        (double value, double slope) = series.At(x);

        Assert.Equal(Math.Exp(x) * Math.Sin(3 * x), value, 13);
        Assert.Equal(Math.Exp(x) * (Math.Sin(3 * x) + (3 * Math.Cos(3 * x))), slope, 11);
    }

    [Fact]
    public void A_constant_has_no_slope() => Assert.Equal((2.5, 0.0), ChebyshevSeries.Through([2.5]).At(0.4));
}
