using FeltNest.Ball;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Flatten;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Panel.Flatten;

public sealed class ConvergenceTests
{
    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(90)]
    public void A_mated_panel_stays_the_same_as_the_degree_grows(double waistDeg)
    {
        // An edge free to ripple would leave the smooth equilibrium at some degree: the energy would then fall by per cents.
        SeamDomain domain = new(TwoHarmonicSeam.ForWaist(waistDeg * Math.PI / 180));
        FeltLaw felt = FeltLaw.Isotropic(1, 0.3);

        FlatMap coarse = new ElasticFlattening(felt, EdgeRule.Mated, null, 25).Flatten(domain).Map;
        FlatMap fine = new ElasticFlattening(felt, EdgeRule.Mated, null, 37).Flatten(domain).Map;

        Assert.InRange(PanelEnergy.Of(fine, felt) / PanelEnergy.Of(coarse, felt), 1 - 2e-6, 1 + 2e-6);
        Assert.Equal(0, (coarse.At(1, 0).Place - fine.At(1, 0).Place).Length, 2e-5);
    }

    [Fact]
    public void The_conformal_edge_closes_better_the_higher_the_degree()
    {
        SeamDomain domain = new(TwoHarmonicSeam.ForWaist(Math.PI / 3));

        double low = new ConformalFlattening(13).Flatten(domain).Solve.Residual;
        double high = new ConformalFlattening(ConformalFlattening.UsualDegree).Flatten(domain).Solve.Residual;

        Assert.InRange(low, 1e-4, 1e-1);
        Assert.InRange(high, 0, 1e-7);
    }
}
