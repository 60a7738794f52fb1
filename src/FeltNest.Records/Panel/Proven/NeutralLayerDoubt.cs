using FeltNest.Ball;

namespace FeltNest.Panel.Proven;

/// <summary>A neutral layer found in an outline against what an outline cannot tell from it: felt pulled on, or shrunk, by more than the
/// ball file states makes the panel smaller or larger as a smaller or larger sphere does.</summary>
internal sealed record NeutralLayerDoubt
{
    /// <summary>Neutral layers from here to <see cref="LikelyHigh"/> are likely: the middle of the felt, give or take a fifth of its
    /// thickness for a face that is denser (assumed, no published figure was found).</summary>
    public const double LikelyLow = 0.3;

    /// <summary>The other end of the likely range.</summary>
    public const double LikelyHigh = 0.7;

    /// <summary>The middle of the felt.</summary>
    public const double Middle = 0.5;

    /// <summary>The neutral layer found.</summary>
    public required double Found { get; init; }

    /// <summary>Stretch on application beyond that of the ball file with which the outline has its neutral layer in the middle, %; below 0
    /// it is shrinkage in the cure that is left out.</summary>
    public required double StretchPercent { get; init; }

    /// <summary>How far a per cent of stretch moves the neutral layer.</summary>
    public required double LayerPerPercent { get; init; }

    /// <summary>Whether the neutral layer found lies outside the likely range.</summary>
    public bool IsUnlikely => Found is < LikelyLow or > LikelyHigh;

    /// <summary>What the stretch of a ball file has to be for it, %, along the warp and the weft; null where shrinkage is.</summary>
    public required (double Warp, double Weft)? Stated { get; init; }

    /// <summary>The doubt about a ball that was found in an outline.</summary>
    /// <param name="ball">The ball with the values found.</param>
    /// <remarks>Similar panels on similar spheres: a panel cut smaller by a share fits the sphere that is smaller by it. The seam gap,
    /// which is not pulled, is left out: a few thousandths of the answer.</remarks>
    public static NeutralLayerDoubt Of(BallSpec ball)
    {
        double found = ball.FittedRadiusMm;
        BallSpec middle = ball with { Felt = ball.Felt with { NeutralLayer = Middle } };
        double beyond = (middle.FittedRadiusMm / found) - 1;
        double With(double statedPercent) => (((1 + (statedPercent / 100)) * (1 + beyond)) - 1) * 100;
        return new NeutralLayerDoubt
        {
            Found = ball.Felt.NeutralLayer,
            StretchPercent = 100 * beyond,
            LayerPerPercent = found / (100 * ball.Felt.ThicknessMm),
            Stated = beyond >= 0
                ? (With(ball.Felt.ApplicationStretchWarpPercent), With(ball.Felt.ApplicationStretchWeftPercent))
                : null,
        };
    }
}
