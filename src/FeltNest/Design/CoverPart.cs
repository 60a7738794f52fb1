using FeltNest.Ball;
using FeltNest.Layout;
using FeltNest.Panel;

namespace FeltNest.Design;

/// <summary>The flat panel of a ball as a part to lay.</summary>
internal static class CoverPart
{
    /// <summary>The part, with the ball's name, its felt's mass and its design angle.</summary>
    public static LayoutPart Of(BallSpec ball, FlatPanel panel) =>
        new()
        {
            Name = ball.Name,
            Ball = ball.Name,
            Outline = panel.Outline,
            Arcs = panel.Arcs,
            MassPerAreaGsm = ball.Felt.MassPerAreaGsm,
            WarpAngleDeg = ball.Panel.WarpAngleDeg,
        };
}
