using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using Xunit;

namespace FeltNest.Tests.Numerics;

public sealed class QuadratureTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(30)]
    public void Gauss_rules_are_exact_to_degree_2n_less_1(int n)
    {
        (double[] nodes, double[] weights) = GaussLegendre.Rule(n);
        for (int power = 0; power < 2 * n; power++)
        {
            double sum = nodes.Zip(weights, (x, w) => w * Math.Pow(x, power)).Sum();
            Assert.Equal(1.0 / (power + 1), sum, 13);
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_disc_rule_integrates_even_monomials_over_the_whole_disc(bool mirrors)
    {
        DiscQuadrature rule = DiscQuadrature.Exact(12, mirrors);

        Assert.Equal(Math.PI, Sum(0, 0), 13);
        Assert.Equal(Math.PI / 4, Sum(2, 0), 13);

        // Twelfth part of the radius times 2 pi 3!! 5!!/10!! round the circle: pi/512.
        Assert.Equal(Math.PI / 512, Sum(4, 6), 13);

        double Sum(int p, int q) =>
            Enumerable.Range(0, rule.Count).Sum(i => rule.Weights[i] * Math.Pow(rule.X[i], p) * Math.Pow(rule.Y[i], q));
    }
}
