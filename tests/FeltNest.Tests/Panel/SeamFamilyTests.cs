using FeltNest.Ball;
using FeltNest.Panel;
using FeltNest.Seam;
using FeltNest.Tests.Seam;
using Xunit;

namespace FeltNest.Tests.Panel;

/// <summary>Flat panels of the other seam families.</summary>
public sealed class SeamFamilyTests
{
    [Theory]
    [InlineData(SeamFamily.Elastica, FlatteningMethod.Elastic, EdgeRule.Mated, 0.15)]
    [InlineData(SeamFamily.Elastica, FlatteningMethod.Conformal, EdgeRule.Mated, 0.15)]
    [InlineData(SeamFamily.FourArc, FlatteningMethod.Elastic, EdgeRule.Mated, 0.6)]
    [InlineData(SeamFamily.FourArc, FlatteningMethod.Elastic, EdgeRule.True, 0.6)]
    [InlineData(SeamFamily.FourArc, FlatteningMethod.Conformal, EdgeRule.Mated, 0.6)]
    [InlineData(SeamFamily.FourArc, FlatteningMethod.Equidistant, EdgeRule.Mated, 0.6)]
    public void The_independent_check_finds_nothing_wrong(SeamFamily family, FlatteningMethod method, EdgeRule edge, double energyPercent)
    {
        BallSpec ball = Balls.Usual();
        ball = ball with { Seam = ball.Seam with { Curve = family }, Panel = new PanelSpec(method, edge, null) };
        FlatPanel panel = PanelFlattener.Flatten(ball);

        FlatPanelFindings found = FlatPanelCheck.Of(panel, PanelRequest.For(ball));

        Assert.InRange(found.OutlineInsideMm, 0, 1e-9);
        Assert.InRange(found.HalfTurnMm, 0, 1e-9);
        Assert.InRange(found.SeamLengthDifferencePercent, 0, 0.01);
        Assert.InRange(found.SphereAreaDifferencePercent, 0, 0.02);
        Assert.InRange(found.EdgeOffSeamMm, 0, 1e-8);
        Assert.InRange(found.EnergyDifferencePercent, 0, energyPercent);
    }

    [Fact]
    public void Four_arcs_settle_to_a_few_hundredths_of_a_millimetre()
    {
        // The jumps of the seam's curvature leave the flat map's second derivatives with jumps too, so that its degree brings digits
        // slowly: this is the accuracy that is claimed for it.
        FeltNest.Panel.Domain.SeamDomain domain = new(FourArcSeam.ForWaist(Math.PI / 3));
        FeltNest.Panel.Felt.FeltLaw felt = FeltNest.Panel.Felt.FeltLaw.Isotropic(1, 0.3);

        FeltNest.Panel.Disc.FlatMap[] maps =
        [
            .. new[] { 37, 49 }
                .Select(degree => new FeltNest.Panel.Elastic.ElasticFlattening(felt, EdgeRule.Mated, null, degree).Flatten(domain).Map),
        ];

        foreach ((double x, double y) in new[] { (1.0, 0.0), (0.0, -1.0), (0.6, 0.8), (0.8, 0.6) })
        {
            Assert.InRange(31.75 * (maps[0].At(x, y).Place - maps[1].At(x, y).Place).Length, 0, 0.02);
        }
    }

    [Fact]
    public void Points_of_a_seam_give_its_panel()
    {
        BallSpec ball = Balls.Usual();
        SeamPoint[] points = PointSeamTests.Points(TwoHarmonicSeam.ForWaist(26 / 31.75).At, 120, 31.75);

        FlatPanel known = PanelFlattener.Flatten(ball);
        FlatPanel panel = PanelFlattener.Flatten(
            ball with { Seam = new SeamSpec { Curve = SeamFamily.Points, WaistMm = 0, SeamGapMm = 0.4, Points = points } });

        Assert.Equal(known.LengthMm, panel.LengthMm, 1e-4);
        Assert.Equal(known.AreaMm2, panel.AreaMm2, 0.5);
        Assert.Equal(26, panel.Sphere.WaistMm, 1e-5);
    }

    [Fact]
    public void A_seam_without_mirrors_has_a_mated_panel_that_keeps_the_half_turn_alone()
    {
        SeamSeries skew = new([0.75, 0.25], [0.02, -0.03], [0.866], [0.05]);
        BallSpec ball = Balls.Usual();
        ball = ball with
        {
            Seam = new SeamSpec
            {
                Curve = SeamFamily.Points,
                WaistMm = 0,
                SeamGapMm = 0,
                Points = PointSeamTests.Points(skew.At, 150, 1),
            }
        };

        FlatPanel panel = PanelFlattener.Flatten(ball);
        FlatPanelFindings found = FlatPanelCheck.Of(panel, PanelRequest.For(ball));

        Assert.InRange(found.EdgeMismatchPercent, 0, 0.05);
        Assert.InRange(found.EdgeOffSeamMm, 0, 1e-6);
        Assert.InRange(found.EnergyDifferencePercent, 0, 0.2);
        Assert.Equal(0, panel.Solve.ChordTorqueNmm, 1e-3);
    }
}
