using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using Xunit;

namespace FeltNest.Tests.Panel.Disc;

public sealed class DiscBasisTests
{
    [Theory]
    [InlineData(9, true)]
    [InlineData(13, false)]
    public void Gradients_are_orthonormal_over_the_disc(int degree, bool mirrors)
    {
        foreach (DiscBasis basis in new[] { DiscBasis.Odd(degree, true, !mirrors), DiscBasis.EvenBubbles(degree + 1, true, !mirrors) })
        {
            DiscQuadrature rule = DiscQuadrature.Exact(2 * degree + 2, mirrors);
            GradientTable table = new(basis, rule);
            double[] weighted = new double[2 * rule.Count];
            double[] products = new double[basis.Count];
            for (int i = 0; i < basis.Count; i++)
            {
                for (int q = 0; q < rule.Count; q++)
                {
                    weighted[q] = rule.Weights[q] * table.Row(i)[q];
                    weighted[q + rule.Count] = rule.Weights[q] * table.Row(i)[q + rule.Count];
                }

                DenseRows.Dots(weighted, table.Rows(basis.Count), products);
                for (int j = 0; j < basis.Count; j++)
                {
                    Assert.Equal(i == j ? 1 : 0, products[j], 11);
                }
            }
        }
    }

    [Fact]
    public void The_counts_are_those_of_all_polynomials_of_odd_degree()
    {
        // Degrees 1, 3, ..., 2m - 1 hold 2 + 4 + ... + 2m = m(m + 1) independent polynomials.
        Assert.Equal(5 * 6, DiscBasis.Odd(9, true, true).Count);
        Assert.Equal(5 * 6, FlatSpace.Of(9, true).Count);
        Assert.Equal(2 * 5 * 6, FlatSpace.Of(9, false).Count);
    }

    [Theory]
    [InlineData(0.3, -0.6)]
    [InlineData(0.0, 0.9)]
    [InlineData(-0.2, 0.1)]
    public void Gradients_agree_with_differences(double x, double y)
    {
        DiscBasis basis = DiscBasis.Odd(11, true, true);
        const double h = 1e-5;
        int n = basis.Count;
        double[] dx = new double[n];
        double[] dy = new double[n];
        double[] east = new double[n];
        double[] west = new double[n];
        double[] north = new double[n];
        double[] south = new double[n];
        double[] ignored = new double[n];
        basis.Evaluate(x, y, ignored, dx, dy);
        basis.Evaluate(x + h, y, east, ignored, new double[n]);
        basis.Evaluate(x - h, y, west, ignored, new double[n]);
        basis.Evaluate(x, y + h, north, ignored, new double[n]);
        basis.Evaluate(x, y - h, south, ignored, new double[n]);
        for (int i = 0; i < n; i++)
        {
            Assert.Equal((east[i] - west[i]) / (2 * h), dx[i], 1e-6);
            Assert.Equal((north[i] - south[i]) / (2 * h), dy[i], 1e-6);
        }
    }

    [Fact]
    public void Bubbles_are_zero_on_the_rim_and_everything_is_finite_at_the_pole()
    {
        DiscBasis basis = DiscBasis.Odd(15, true, true);
        double[] values = new double[basis.Count];
        double[] dx = new double[basis.Count];
        double[] dy = new double[basis.Count];

        basis.Evaluate(0.6, 0.8, values, dx, dy);
        Assert.All(values[basis.RimCount..], value => Assert.Equal(0, value, 12));

        basis.Evaluate(0, 0, values, dx, dy);
        Assert.All([.. values, .. dx, .. dy], value => Assert.True(double.IsFinite(value)));
        Assert.Contains(dx, value => value != 0);
    }
}
