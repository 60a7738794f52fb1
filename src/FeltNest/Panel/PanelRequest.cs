using System.Globalization;
using FeltNest.Ball;
using FeltNest.Panel.Felt;
using FeltNest.Seam;

namespace FeltNest.Panel;

/// <summary>What a flat panel is computed from.</summary>
/// <param name="RadiusMm">Radius of the fitted sphere, mm.</param>
/// <param name="Seam">The seam on the unit sphere.</param>
/// <param name="Method">How the panel is made flat.</param>
/// <param name="Edge">Edge rule of the elastic method.</param>
/// <param name="Law">Stiffness of the felt in the panel's axes, N/mm.</param>
/// <param name="SeamGapMm">Gap left between two panels, mm.</param>
/// <param name="ShrinkWarp">Shrinkage along the warp when cured, as a part of the cut length.</param>
/// <param name="ShrinkWeft">Shrinkage along the weft.</param>
/// <param name="WarpAngle">Angle from the warp to the panel's +u, radians; null where any angle serves.</param>
public sealed record PanelRequest(
    double RadiusMm,
    SeamCurve Seam,
    FlatteningMethod Method,
    EdgeRule Edge,
    FeltLaw Law,
    double SeamGapMm,
    double ShrinkWarp,
    double ShrinkWeft,
    double? WarpAngle)
{
    /// <summary>Greatest compression along the edge, as a part of flat length, 0 to below 1: binds the mated elastic panel. Null for
    /// none.</summary>
    public double? EdgeLimit { get; init; }

    /// <summary>Stretch along the warp when the felt is pulled on, as a part of the cut length.</summary>
    public double StretchWarp { get; init; }

    /// <summary>Stretch along the weft when the felt is pulled on.</summary>
    public double StretchWeft { get; init; }

    /// <summary>How far outside the panel wanted the die cuts, mm, below 0 inside.</summary>
    public double DieOffsetMm { get; init; }

    /// <summary>The request of a ball.</summary>
    /// <exception cref="InputException">The waist does not fit the sphere, or the felt shrinks or is pulled on unevenly while its panels
    /// may lie at any angle.</exception>
    public static PanelRequest For(BallSpec ball)
    {
        double radius = ball.FittedRadiusMm;
        if (ball.Panel.WarpAngleDeg is null && ball.Felt.CureShrinkWarpPercent != ball.Felt.CureShrinkWeftPercent)
        {
            throw new InputException(null, "panel.warpAngleDeg", string.Create(
                CultureInfo.InvariantCulture,
                $"any, but the felt shrinks {ball.Felt.CureShrinkWarpPercent} % along the warp and {ball.Felt.CureShrinkWeftPercent} % "
                    + $"along the weft; an angle is needed"));
        }

        if (ball.Panel.WarpAngleDeg is null && ball.Felt.ApplicationStretchWarpPercent != ball.Felt.ApplicationStretchWeftPercent)
        {
            throw new InputException(null, "panel.warpAngleDeg", string.Create(
                CultureInfo.InvariantCulture,
                $"any, but the felt is pulled on by {ball.Felt.ApplicationStretchWarpPercent} % along the warp and "
                    + $"{ball.Felt.ApplicationStretchWeftPercent} % along the weft; an angle is needed"));
        }

        double most = ball.Felt.MaxEdgeCompressionPercent;
        if (!(most >= 0))
        {
            throw new InputException(null, "felt.maxEdgeCompressionPercent", FormattableString.Invariant($"{most}; 0 to 100 is allowed"));
        }

        double? warpAngle = ball.Panel.WarpAngleDeg * Math.PI / 180;
        return new PanelRequest(
            radius,
            SeamCurve.For(ball.Seam, radius),
            ball.Panel.Flattening,
            ball.Panel.Edge,
            FeltLaw.For(ball.Felt, warpAngle),
            ball.Seam.SeamGapMm,
            ball.Felt.CureShrinkWarpPercent / 100,
            ball.Felt.CureShrinkWeftPercent / 100,
            warpAngle)
        {
            // A felt that takes up all of itself has no limit.
            EdgeLimit = most < 100 ? most / 100 : null,
            StretchWarp = ball.Felt.ApplicationStretchWarpPercent / 100,
            StretchWeft = ball.Felt.ApplicationStretchWeftPercent / 100,
            DieOffsetMm = ball.Panel.DieOffsetMm,
        };
    }
}
