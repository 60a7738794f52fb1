using System.Globalization;
using FeltNest.Ball;
using FeltNest.Panel.Felt;
using FeltNest.Seam;

namespace FeltNest.Panel;

/// <summary>What a ball asks of its panel.</summary>
internal static class BallPanel
{
    extension(PanelRequest)
    {
        /// <summary>The request of a ball.</summary>
        /// <exception cref="InputException">The waist does not fit the sphere, or the felt shrinks or is pulled on unevenly while its
        /// panels may lie at any angle.</exception>
        public static PanelRequest For(BallSpec ball)
        {
            double radius = ball.FittedRadiusMm;
            RequireWarp(ball);
            double most = ball.Felt.MaxEdgeCompressionPercent;
            if (!(most >= 0))
            {
                throw new InputException(
                    null, "felt.maxEdgeCompressionPercent", FormattableString.Invariant($"{most}; 0 to 100 is allowed"));
            }

            double? warpAngle = ball.Panel.WarpAngleDeg * Math.PI / 180;
            return new PanelRequest
            {
                RadiusMm = radius,
                Seam = SeamCurve.For(ball.Seam, radius),
                Method = ball.Panel.Flattening,
                Edge = ball.Panel.Edge,
                Law = FeltLaw.For(ball.Felt, warpAngle),
                SeamGapMm = ball.Seam.SeamGapMm,
                ShrinkWarp = ball.Felt.CureShrinkWarpPercent / 100,
                ShrinkWeft = ball.Felt.CureShrinkWeftPercent / 100,
                WarpAngle = warpAngle,
                // A felt that takes up all of itself has no limit.
                EdgeLimit = most < 100 ? most / 100 : null,
                StretchWarp = ball.Felt.ApplicationStretchWarpPercent / 100,
                StretchWeft = ball.Felt.ApplicationStretchWeftPercent / 100,
                DieOffsetMm = ball.Panel.DieOffsetMm,
            };
        }
    }

    // Felt that shrinks or is pulled on unevenly lies at an angle that is known.
    private static void RequireWarp(BallSpec ball)
    {
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
    }
}
