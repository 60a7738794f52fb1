using FeltNest.Ball;
using FeltNest.Panel;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Flatten;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Panel.Elastic;

public sealed class ElasticProblemTests
{
    private static readonly SeamDomain Domain = new(TwoHarmonicSeam.ForWaist(Math.PI / 3));

    [Theory]
    [InlineData(EdgeRule.Free, true, null)]
    [InlineData(EdgeRule.Mated, true, null)]
    [InlineData(EdgeRule.Mated, true, 0.1)]
    [InlineData(EdgeRule.True, true, null)]
    [InlineData(EdgeRule.Free, false, null)]
    [InlineData(EdgeRule.Mated, false, null)]
    [InlineData(EdgeRule.Mated, false, 0.1)]
    [InlineData(EdgeRule.True, false, null)]
    public void Derivatives_agree_with_differences(EdgeRule rule, bool mirrors, double? limit)
    {
        FeltLaw law = mirrors ? FeltLaw.Isotropic(1, 0.3) : new FeltLaw
        {
            UU = 1.2,
            UV = 0.3,
            VV = 0.9,
            US = 0.1,
            VS = 0.05,
            SS = 0.4,
        };
        FlatSpace space = FlatSpace.Of(9, mirrors);
        ElasticProblem problem = new(Domain, new ElasticTables(space), law, rule, limit);
        problem.Edge.Held = limit is null ? [] : [0, 1];
        int n = problem.Unknowns;
        int m = problem.Equations;
        double[] x = new EquidistantFlattening(9).Flatten(Domain).Map.Raised(space).Coefficients.ToArray();
        double[] gradient = new double[n];
        double[] jacobian = new double[n * m];
        double[] multipliers = [.. Enumerable.Range(0, m).Select(i => 0.3 - (0.1 * i))];
        double[] hessian = new double[n * n];
        problem.Linearise(x, gradient, jacobian);
        problem.Curve(x, multipliers, hessian);
        const double h = 1e-6;
        double[] more = new double[m];
        double[] less = new double[m];
        double[] ahead = new double[n];
        double[] behind = new double[n];
        double[] rowsAhead = new double[n * m];
        double[] rowsBehind = new double[n * m];
        for (int i = 0; i < n; i += 5)
        {
            double[] right = [.. x];
            double[] left = [.. x];
            right[i] += h;
            left[i] -= h;
            Assert.True(problem.TryValue(right, out double up, more) && problem.TryValue(left, out double down, less));
            problem.TryValue(left, out down, less);
            Assert.Equal((up - down) / (2 * h), gradient[i], 1e-8);
            for (int k = 0; k < m; k++)
            {
                Assert.Equal((more[k] - less[k]) / (2 * h), jacobian[(k * n) + i], 1e-8);
            }

            problem.Linearise(right, ahead, rowsAhead);
            problem.Linearise(left, behind, rowsBehind);
            for (int j = 0; j < n; j++)
            {
                double second = (ahead[j] - behind[j]) / (2 * h);
                for (int k = 0; k < m; k++)
                {
                    second += multipliers[k] * (rowsAhead[(k * n) + j] - rowsBehind[(k * n) + j]) / (2 * h);
                }

                Assert.Equal(second, hessian[(j * n) + i], 1e-7);
            }
        }
    }

    [Theory]
    [InlineData(EdgeRule.Free)]
    [InlineData(EdgeRule.Mated)]
    [InlineData(EdgeRule.True)]
    public void Assuming_only_the_half_turn_gives_the_mirror_symmetric_panel(EdgeRule rule)
    {
        // A law whose mirror symmetry is broken by a rounding takes the general path: twice the unknowns, chord held.
        FeltLaw felt = FeltLaw.Isotropic(1, 0.3);
        FeltLaw general = felt with { US = 1e-15 };

        (FlatMap plain, PanelSolve ofPlain) = new ElasticFlattening(felt, rule, null, 17).Flatten(Domain);
        (FlatMap half, PanelSolve ofHalf) = new ElasticFlattening(general, rule, null, 17).Flatten(Domain);

        Assert.Equal(2 * ofPlain.Unknowns, ofHalf.Unknowns);
        foreach ((double x, double y) in new[] { (1.0, 0.0), (0.0, -1.0), (0.6, 0.8), (-0.6, 0.8), (0.3, 0.1) })
        {
            Assert.Equal(0, (plain.At(x, y).Place - half.At(x, y).Place).Length, 9);
        }

        Assert.Equal(0, ofHalf.ChordTorqueNmm, 12);
    }

    [Fact]
    public void A_felt_that_pulls_askew_turns_the_panel_unless_its_chord_is_held()
    {
        FeltLaw skew = new()
        {
            UU = 1.1,
            UV = 0.33,
            VV = 1.1,
            US = 0.05,
            VS = 0.02,
            SS = 0.38,
        };

        (FlatMap map, PanelSolve solve) = new ElasticFlattening(skew, EdgeRule.Mated, null, 17).Flatten(Domain);

        Assert.Equal(0, map.At(1, 0).Place.Y, 12);
        Assert.True(Math.Abs(solve.ChordTorqueNmm) > 1e-5);
        Assert.NotEqual(map.At(0.6, 0.8).Place.Y, -map.At(0.6, -0.8).Place.Y, 5);
    }

    [Fact]
    public void The_same_solve_gives_the_same_bits()
    {
        double[] once =
            new ElasticFlattening(FeltLaw.Isotropic(1, 0.3), EdgeRule.Mated, null, 21).Flatten(Domain).Map.Coefficients.ToArray();
        double[] again =
            new ElasticFlattening(FeltLaw.Isotropic(1, 0.3), EdgeRule.Mated, null, 21).Flatten(Domain).Map.Coefficients.ToArray();

        Assert.Equal(once, again);
    }
}
