using static FeltNest.InvariantText;

namespace FeltNest.Panel.Proven;

/// <summary>What is said of a neutral layer found.</summary>
internal static class DoubtWords
{
    /// <summary>The stretch or shrinkage that an outline cannot tell from the neutral layer, in one sentence without its full
    /// stop.</summary>
    public static string Of(NeutralLayerDoubt doubt)
    {
        string instead = doubt.Stated is var (warp, weft)
            ? Invariant(
                $"felt pulled on by {doubt.StretchPercent:0.0} % more than the ball file states (felt.applicationStretchWarpPercent ")
                + Invariant($"{warp:0.0}, felt.applicationStretchWeftPercent {weft:0.0})")
            : Invariant($"felt that shrinks in the cure by {-doubt.StretchPercent:0.0} % more than the ball file states");
        return Invariant($"neutral layer {doubt.Found:0.000} and stretch look alike in an outline: {instead} would give ")
            + Invariant($"{NeutralLayerDoubt.Middle:0.0}; each per cent moves it by {doubt.LayerPerPercent:0.00}");
    }

    /// <summary>The same of a neutral layer outside the likely range.</summary>
    public static string Unlikely(NeutralLayerDoubt doubt) =>
        Invariant($"the neutral layer lies outside {NeutralLayerDoubt.LikelyLow:0.0} to {NeutralLayerDoubt.LikelyHigh:0.0}, ")
            + $"which is unlikely; {Of(doubt)}: measure the pull, or hold the neutral layer";
}
