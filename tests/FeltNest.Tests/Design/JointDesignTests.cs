using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Layout;
using FeltNest.Layout.Check;
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
        BallSpec ball = new(
            "test", RuleType.None, new CoreSpec(60, 45), new CementSpec(0.15, 120),
            new FeltSpec("felt", FeltConstruction.Woven, 3.2, 3, 800, warp, weft, shear, 0.3, 0.5, 30, 40, 0, 0),
            new SeamSpec(SeamFamily.TwoHarmonic, 28, 0.4), new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Mated, 0));
        return JointDesign.Run(
            ball, (part, angle) => new LayoutRequest(part, 800, 15, 4, new LayoutRules(angle, 0, RowRule.Same, false), 1, 1),
            stop: TestContext.Current.CancellationToken);
    }
}
