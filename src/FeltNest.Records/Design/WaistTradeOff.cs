using System.Globalization;
using FeltNest.Ball;
using FeltNest.Layout;

namespace FeltNest.Design;

/// <summary>What a study of waists found.</summary>
/// <param name="Ball">The ball; its own waist is one of many here.</param>
/// <param name="Roll">The question asked of the layout engine, with the part of the first waist.</param>
/// <param name="Points">One a waist, narrowest first; at least one.</param>
/// <param name="Unanswered">Waists without a panel that keeps the felt's limit and fits the roll, with the reason.</param>
/// <param name="CutShort">True when the study was stopped before all waists were done.</param>
internal sealed record WaistTradeOff(
    BallSpec Ball, LayoutRequest Roll, IReadOnlyList<WaistPoint> Points, IReadOnlyList<(double WaistMm, string Reason)> Unanswered,
    bool CutShort)
{
    // Felt that differs by less, in parts, is the same: a fifth of a per cent is less than one layout of little effort differs from the
    // next.
    private const double Same = 2e-3;

    /// <summary>The waist with the least felt within the felt's limits, or null where none keeps them.</summary>
    public WaistPoint? Best =>
        Points.Where(p => p.Allowed).MinBy(p => (p.Yield.PerThousandBalls.SquareMetres, p.Strain.EdgeMaxCompressionPercent));

    /// <summary>Waists round the one marked that keep the limits with practically the same felt, mm: one waist alone where the least is
    /// sharp. Null where none is marked.</summary>
    public (double FromMm, double ToMm)? Flat
    {
        get
        {
            if (Best is not { } best)
            {
                return null;
            }

            double most = best.Yield.PerThousandBalls.SquareMetres * (1 + Same);
            int at = Points.ToList().IndexOf(best);
            bool IsSame(int i) =>
                i >= 0 && i < Points.Count && Points[i].Allowed && Points[i].Yield.PerThousandBalls.SquareMetres <= most;
            int from = at;
            int to = at;
            while (IsSame(from - 1))
            {
                from--;
            }

            while (IsSame(to + 1))
            {
                to++;
            }

            return (Points[from].WaistMm, Points[to].WaistMm);
        }
    }

    /// <summary>The rule that marked it, in words.</summary>
    public string Rule => string.Create(
        CultureInfo.InvariantCulture,
        $"least felt per thousand balls among the waists whose edge is compressed by at most {Ball.Felt.MaxEdgeCompressionPercent} "
            + $"% and whose felt is stretched by at most {Ball.Felt.MaxStretchPercent} %");

    /// <summary>What the rule found, in words.</summary>
    public string Finding => Best is { } best
        ? FormattableString.Invariant($"waist {best.WaistMm:0.###} mm: {Rule}{FlatWords}")
        : string.Create(
            CultureInfo.InvariantCulture,
            $"no waist keeps both limits (edge {Ball.Felt.MaxEdgeCompressionPercent} %, stretch {Ball.Felt.MaxStretchPercent} %); waist "
                + $"{Nearest.WaistMm:0.###} mm comes nearest with {Nearest.Strain.EdgeMaxCompressionPercent:0.0} % along the edge and "
                + $"{Nearest.Strain.MaxStretchPercent:0.0} % stretch");

    private string FlatWords => Flat is var (from, to) && from < to
        ? FormattableString.Invariant($"; flat: {from:0.###} to {to:0.###} mm take within {100 * Same:0.#} % of the same felt")
        : string.Empty;

    // The waist that passes its limits by the least share.
    private WaistPoint Nearest => Points.MinBy(p => Math.Max(
        p.Strain.EdgeMaxCompressionPercent - Ball.Felt.MaxEdgeCompressionPercent,
        p.Strain.MaxStretchPercent - Ball.Felt.MaxStretchPercent))!;
}
