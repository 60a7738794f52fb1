using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Design;

public sealed class JointDesignTests
{
    [Fact]
    public void Felt_alike_in_all_directions_gains_what_a_free_tilt_gains()
    {
        JointResult joint = Run(2, 2, 2 / 2.6);
        Assert.Equal(
            joint.Choices[1].Yield.PanelsPerMetre, joint.Choices[2].Yield.PanelsPerMetre, 1e-2 * joint.Choices[1].Yield.PanelsPerMetre);
        Assert.True(joint.Layout.PanelsPerMetre >= joint.Choices[0].Yield.PanelsPerMetre);
    }

    [Fact, Trait("tier", "long")]
    public void The_panel_is_laid_at_the_angle_it_is_designed_for()
    {
        JointResult joint = Run(4, 2, 1);
        double design = joint.Ball.Panel.WarpAngleDeg!.Value;
        Assert.All(joint.Layout.Bands[0].Repeat.Panels, p => Assert.Equal(0, Math.IEEERemainder(p.AngleDeg - design, 180), 1e-6));
        Assert.Equal(design, joint.Layout.Parts[0].WarpAngleDeg);
        Assert.Empty(LayoutCheck.Verify(joint.Layout).Violations);
        Assert.True(joint.Layout.PanelsPerMetre >= joint.Choices[0].Yield.PanelsPerMetre);
    }

    private static JointResult Run(double warp, double weft, double shear)
    {
        // Invented numbers of a ball's size.
        BallSpec ball = new()
        {
            Name = "test",
            RuleType = RuleType.None,
            Core = new CoreSpec { OuterDiameterMm = 60, MassG = 45 },
            Cement = new CementSpec { ThicknessMm = 0.15, MassPerAreaGsm = 120 },
            Felt = new FeltSpec
            {
                Name = "felt",
                Construction = FeltConstruction.Woven,
                ThicknessMm = 3.2,
                FinishedThicknessMm = 3,
                MassPerAreaGsm = 800,
                WarpModulusNPerMm = warp,
                WeftModulusNPerMm = weft,
                ShearModulusNPerMm = shear,
                Poisson = 0.3,
                NeutralLayer = 0.5,
                MaxStretchPercent = 30,
                MaxEdgeCompressionPercent = 40,
                CureShrinkWarpPercent = 0,
                CureShrinkWeftPercent = 0,
            },
            Seam = new SeamSpec { Curve = SeamFamily.TwoHarmonic, WaistMm = 28, SeamGapMm = 0.4 },
            Panel = new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Mated, 0),
        };
        return JointDesign.Run(
            ball, (part, angle) => new LayoutRequest
            {
                Part = part,
                RollWidthMm = 800,
                Trims = EdgeTrims.Both(15),
                GapMm = 4,
                Rules = new LayoutRules(angle, 0, RowRule.Same, false),
                Effort = 1,
                Seed = 1,
            },
            stop: TestContext.Current.CancellationToken);
    }
}
