using FeltNest.Panel.Wrap;

namespace FeltNest.Panel.Lot;

/// <summary>Figures of the gap round a seam.</summary>
internal static class LotGaps
{
    // Room for the last digit of a gap that lies on an end of the glue's range, mm.
    private const double Rounding = 1e-9;

    /// <summary>The figures of a piece laid with its edge free.</summary>
    /// <param name="free">The piece.</param>
    /// <param name="places">Its places.</param>
    /// <param name="met">Those that count; the others are outside the glue's range.</param>
    /// <param name="glue">The glue's range, mm.</param>
    public static LotGap Of(EdgeFreeWrap free, SeamPlaces places, IReadOnlyList<int> met, (double FromMm, double ToMm) glue)
    {
        double[] gaps = [.. met.Select(i => free.Gaps[i]!.Value)];
        double[] shares = [.. met.Select(i => places.Shares[i])];
        double inside = gaps.Zip(shares).Sum(at => IsWithin(at.First, glue) ? at.Second : 0);
        return new LotGap
        {
            AtMm = gaps,
            MeanMm = gaps.Zip(shares, (gap, share) => gap * share).Sum() / shares.Sum(),
            WaistMm = Mean(free, places.Waists),
            TipMm = Mean(free, places.Tips),
            LeastMm = gaps.Min(),
            GreatestMm = gaps.Max(),
            OutsidePercent = Math.Max(0, 100 * (1 - inside)),
        };
    }

    private static bool IsWithin(double gap, (double FromMm, double ToMm) glue) =>
        gap >= glue.FromMm - Rounding && gap <= glue.ToMm + Rounding;

    private static double? Mean(EdgeFreeWrap free, IReadOnlyList<int> at) =>
        at.Sum(i => free.Gaps[i]) / at.Count(i => free.Gaps[i] is not null);
}
