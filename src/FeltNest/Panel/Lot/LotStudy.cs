using FeltNest.Ball;
using FeltNest.Ball.Passport;
using FeltNest.Ball.Ranges;
using FeltNest.Geometry;
using FeltNest.Panel.Wrap;

namespace FeltNest.Panel.Lot;

/// <summary>Lays what a die cuts on the ball with the felt before and with a new lot, and tells what changes at the seam.</summary>
internal static class LotStudy
{
    // Figures that move the gap of a piece laid with its edge free; mass and the limit of the edge do not.
    private static readonly FeltQuantity[] Moving =
    [
        FeltQuantity.Thickness, FeltQuantity.NeutralLayer, FeltQuantity.WarpModulus, FeltQuantity.WeftModulus, FeltQuantity.ShearModulus,
        FeltQuantity.Poisson, FeltQuantity.ShrinkWarp, FeltQuantity.ShrinkWeft,
    ];

    /// <summary>Studies a lot.</summary>
    /// <param name="ball">The ball with the felt before.</param>
    /// <param name="cut">What the die cuts.</param>
    /// <param name="felt">The new lot.</param>
    /// <param name="glue">The glue's range of gaps, mm.</param>
    /// <exception cref="InputException">The felt and the ball's panel do not go together.</exception>
    /// <exception cref="NoAnswerException">The piece finds no rest on the sphere.</exception>
    public static LotResult Run(BallSpec ball, ArcOutline cut, FeltFile felt, (double FromMm, double ToMm) glue)
    {
        BallSpec covered = LotOfFelt.On(ball, felt);
        (EdgeFreeWrap asCut, EdgeFreeWrap afterCure) = PieceWrap.Free(ball, cut);
        (EdgeFreeWrap newAsCut, EdgeFreeWrap newAfterCure) = PieceWrap.Free(covered, cut);
        SeamPlaces places = SeamPlaces.Of(asCut.Edge);
        int[] met =
        [
            .. Enumerable.Range(0, places.RoundMm.Count).Where(i => Array.TrueForAll(
                [asCut, afterCure, newAsCut, newAfterCure], free => free.Gaps[i] is not null)),
        ];
        if (met.Length == 0)
        {
            throw new NoAnswerException("the edges of two panels nowhere face each other: there is no seam to judge");
        }

        LotGap Gap(EdgeFreeWrap free) => LotGaps.Of(free, places, met, glue);
        return new LotResult
        {
            Before = ball,
            After = covered,
            GlueFromMm = glue.FromMm,
            GlueToMm = glue.ToMm,
            Changes = Changes(ball, covered, felt, cut, places),
            RoundMm = [.. met.Select(i => places.RoundMm[i])],
            Shares = [.. met.Select(i => places.Shares[i])],
            AtFitting = new LotState { Before = Gap(asCut), After = Gap(newAsCut) },
            AfterCure = new LotState { Before = Gap(afterCure), After = Gap(newAfterCure) },
            Named = places.Named,
        };
    }

    private static LotChange[] Changes(BallSpec ball, BallSpec covered, FeltFile felt, ArcOutline cut, SeamPlaces places)
    {
        double mean = RoughMean(covered, cut, places);
        return
        [
            .. felt.Values.OrderBy(one => one.Key).Select(one => new LotChange
            {
                Field = FeltValues.RangeOf(one.Key).Field,
                Before = LotOfFelt.Of(ball.Felt, one.Key),
                After = one.Value.Value,
                MeanGapMm = Moved(covered, one.Key, one.Value.Interval, cut, places) - mean,
            }),
        ];
    }

    // Mean gap with a figure at the end of its interval that its range holds; null where the figure moves no gap or has no interval.
    private static double? Moved(BallSpec covered, FeltQuantity quantity, double? interval, ArcOutline cut, SeamPlaces places)
    {
        if (!Moving.Contains(quantity) || interval is not { } half)
        {
            return null;
        }

        FieldRange range = FeltValues.RangeOf(quantity);
        double here = LotOfFelt.Of(covered.Felt, quantity);
        double end = here + half <= range.High ? here + half : here - half;
        return RoughMean(covered with { Felt = LotOfFelt.With(covered.Felt, quantity, Math.Max(end, range.Low)) }, cut, places);
    }

    private static double RoughMean(BallSpec ball, ArcOutline cut, SeamPlaces places)
    {
        IReadOnlyList<double?> gaps = PieceWrap.RoughGapsAfterCure(ball, cut);
        double share = gaps.Zip(places.Shares).Sum(at => at.First is null ? 0 : at.Second);
        return gaps.Zip(places.Shares).Sum(at => (at.First ?? 0) * at.Second) / share;
    }
}
