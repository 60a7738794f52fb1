using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Flatten;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Panel.Elastic;

/// <summary>Felt with a warp; moduli invented.</summary>
public sealed class WarpTests
{
    private static readonly SeamDomain Domain = new(TwoHarmonicSeam.ForWaist(Math.PI / 3));

    [Fact]
    public void Across_and_along_the_warp_the_general_solve_gives_the_mirror_symmetric_panel()
    {
        foreach (double direction in new[] { 0, Math.PI / 2 })
        {
            FeltLaw law = FeltLaw.Orthotropic(1, 0.66, 0.3, 0.35, direction);

            FlatMap plain = new ElasticFlattening(law, EdgeRule.Mated, null, 21).Flatten(Domain).Map;
            FlatMap half = new ElasticFlattening(law with { US = 1e-15 }, EdgeRule.Mated, null, 21).Flatten(Domain).Map;

            foreach ((double x, double y) in new[] { (1.0, 0.0), (0.0, -1.0), (0.6, 0.8), (-0.6, 0.8) })
            {
                Assert.Equal(0, (plain.At(x, y).Place - half.At(x, y).Place).Length, 1e-8);
            }
        }
    }

    [Fact]
    public void Opposite_angles_give_mirror_images()
    {
        ElasticPanel one = Panel(25, EdgeRule.Mated, 21);
        ElasticPanel other = Panel(-25, EdgeRule.Mated, 21);

        foreach ((double x, double y) in new[] { (0.0, -1.0), (0.6, 0.8), (-0.6, 0.8), (0.3, 0.2) })
        {
            Point2 a = one.Map.At(x, y).Place;
            Point2 b = other.Map.At(x, -y).Place;
            Assert.Equal(0, (a - new Point2(b.X, -b.Y)).Length, 1e-8);
        }

        Assert.Equal(-one.Solve.ChordTorqueNmm, other.Solve.ChordTorqueNmm, 1e-8);
    }

    [Theory, Trait("tier", "long")]
    [InlineData(EdgeRule.Free)]
    [InlineData(EdgeRule.Mated)]
    [InlineData(EdgeRule.True)]
    public void Askew_the_panel_settles_with_the_degree_as_it_does_along_the_warp(EdgeRule rule)
    {
        // Holding the chord by two forces at the tips would leave energies apart by 1e-5 here: their stretch has no limit at the tips.
        FeltLaw law = Law(20);
        ElasticPanel coarse = Panel(20, rule, 29);
        ElasticPanel fine = Panel(20, rule, 37);

        Assert.InRange(PanelEnergy.Of(fine.Map, law) / PanelEnergy.Of(coarse.Map, law), 1 - 1e-6, 1 + 1e-6);
        Assert.Equal(0, (coarse.Map.At(0, -1).Place - fine.Map.At(0, -1).Place).Length, 1e-5);
        Assert.Equal(0, fine.Map.At(1, 0).Place.Y, 12);
    }

    [Fact]
    public void The_torque_is_the_slope_of_the_energy_against_the_angle()
    {
        // Turning the felt under the held panel by a small angle changes the least energy by the torque times that angle (envelope
        // theorem).
        const double step = 0.5;
        const double degree = Math.PI / 180;
        ElasticPanel middle = Panel(20, EdgeRule.Free, 21);
        ElasticPanel low = Panel(20 - step, EdgeRule.Free, 21);
        ElasticPanel high = Panel(20 + step, EdgeRule.Free, 21);

        // Not exactly: the mean turn is held, and moves a little against the chord.
        double slope = (PanelEnergy.Of(high.Map, Law(20 + step)) - PanelEnergy.Of(low.Map, Law(20 - step))) / (2 * step * degree);
        Assert.InRange(middle.Solve.ChordTorqueNmm / slope, 0.99, 1.01);
    }

    [Fact]
    public void Both_panels_of_a_ball_are_the_same_part()
    {
        BallSpec ball = Askew(30);
        FlatPanel panel = PanelFlattener.Flatten(ball);
        FlatPanelFindings found = FlatPanelCheck.Of(panel, PanelRequest.For(ball));

        // s meets pi/2 - s on the same outline: mated edges have equal lengths although the panel has no mirrors.
        Assert.InRange(found.EdgeMismatchPercent, 0, 0.01);
        Assert.InRange(found.EnergyDifferencePercent, 0, 0.15);
        Assert.InRange(found.HalfTurnMm, 0, 1e-9);
        Assert.NotEqual(panel.EdgeMap[100].V, -panel.EdgeMap[260].V, 2);
        Assert.NotEqual(0, panel.Solve.ChordTorqueNmm, 2);
    }

    [Fact]
    public void Stiffer_felt_of_the_same_kind_changes_energy_and_torque_alone()
    {
        BallSpec ball = Askew(30);
        FeltSpec felt = ball.Felt;
        FlatPanel one = PanelFlattener.Flatten(ball);
        FlatPanel two = PanelFlattener.Flatten(
            ball with { Felt = felt with { WarpModulusNPerMm = 4.8, WeftModulusNPerMm = 3.2, ShearModulusNPerMm = 1.2 } });

        Assert.Equal(one.LengthMm, two.LengthMm, 1e-8);
        Assert.Equal(2 * one.Strain.EnergyNmm, two.Strain.EnergyNmm, 1e-8);
        Assert.Equal(2 * one.Solve.ChordTorqueNmm, two.Solve.ChordTorqueNmm, 1e-6);
    }

    private static FeltLaw Law(double degrees) => FeltLaw.Orthotropic(1, 0.66, 0.25, 0.35, -degrees * Math.PI / 180);

    private static ElasticPanel Panel(double degrees, EdgeRule rule, int degree) =>
        new ElasticFlattening(Law(degrees), rule, null, degree).Panel(Domain);

    private static BallSpec Askew(double degrees)
    {
        BallSpec ball = Balls.Usual();
        return ball with
        {
            Felt = ball.Felt with
            {
                WarpModulusNPerMm = 2.4,
                WeftModulusNPerMm = 1.6,
                ShearModulusNPerMm = 0.6,
                Poisson = 0.35,
                MaxEdgeCompressionPercent = 100,
            },
            Panel = ball.Panel with { WarpAngleDeg = degrees },
        };
    }
}
