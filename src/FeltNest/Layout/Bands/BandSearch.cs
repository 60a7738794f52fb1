using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Bands;

/// <summary>Bands across a run of cloth, each of parallel rows with its own tilt: with a repeat, and so a die, of their own and a straight
/// gap between, or on a common repeat and laid into each other.</summary>
/// <remarks>The widths are chosen by <see cref="BandModel"/> on sampled tables; every band is then polished on exact distances and
/// neighbours trade width until the sum is greatest.</remarks>
internal sealed class BandSearch
{
    // Widths in the model, and how far the widths of its choices must differ as a share of a panel.
    private const int Widths = 700;
    private const double ApartShare = 0.1;

    // Trades of width between two neighbours, each a pair of polishes, and the first one's reach as a share of a panel.
    private const int Trades = 9;
    private const double TradeShare = 0.06;

    private readonly LayoutRequest request;
    private readonly SearchEffort effort;
    private readonly TiltRange tilts;
    private readonly double reach;

    private BandSearch(LayoutRequest request, TiltRange tilts, SearchEffort effort)
    {
        this.request = request;
        this.tilts = tilts;
        this.effort = effort;
        reach = request.Part.Outline.Points.Max(p => p.Length);
    }

    /// <summary>Bands of a run: the best ones with repeats of their own where more than one is allowed, and the best on a common
    /// repeat.</summary>
    /// <param name="request">The run as the usable width.</param>
    /// <param name="tables">Its tables.</param>
    /// <param name="tilts">Tilts allowed.</param>
    /// <param name="effort">Work to spend.</param>
    /// <param name="stop">Ends the search with what is found.</param>
    internal static IReadOnlyList<LayCandidate> Best(
        LayoutRequest request, RowTables tables, TiltRange tilts, SearchEffort effort, CancellationToken stop)
    {
        PitchCurve[] curves = BandWidths.Curves(tables);
        BandSearch search = new(request, tilts, effort);
        LayCandidate? apart = null;
        LayCandidate? shared = null;

        // Where all panels must be parallel the bands share a tilt: each promising one is tried for itself.
        IEnumerable<PitchCurve[]> kinds = request.Rules.Rows == RowRule.Any
            ?
            [
                curves,
            ] : curves.OrderByDescending(c => c.Best(request.UsableWidthMm).Density).Take(effort.BandTilts).Select(c => new[] { c });
        foreach (PitchCurve[] kind in kinds)
        {
            foreach (List<RowBand> bands in search.Choices(kind, stop))
            {
                LayCandidate own = new(
                    $"{bands.Count} bands, knapsack over the width, polished",
                    [.. bands.Select(b => new LayoutBand { YFromMm = b.Low, YToMm = b.High, Repeat = b.Repeat })]);
                apart = own.Density > (apart?.Density ?? 0) ? own : apart;
                if (request.Rules.Rows == RowRule.Any
                    && bands.Count == 2
                    && search.Shared(bands[0], bands[1]) is { } one
                    && one.Density > (shared?.Density ?? 0))
                {
                    shared = one;
                }
            }
        }

        return [.. new[] { request.Rules.Bands > 1 ? apart : null, shared }.OfType<LayCandidate>()];
    }

    // The best choices of widths for rows of one kind, polished.
    private IEnumerable<List<RowBand>> Choices(PitchCurve[] kind, CancellationToken stop)
    {
        BandWidths widths = BandWidths.Of(kind, request.UsableWidthMm, Widths);
        foreach (double[] chosen in BandModel.Best(
            widths, request.UsableWidthMm, request.GapMm, Math.Max(2, request.Rules.Bands),
            request.Rules.Rows == RowRule.Any ? effort.BandChoices : 1, ApartShare * reach))
        {
            if (stop.IsCancellationRequested)
            {
                yield break;
            }

            if (Polished(widths, chosen, kind.Length == 1) is { } bands)
            {
                yield return bands;
            }
        }
    }

    private LayCandidate? Shared(RowBand first, RowBand second)
    {
        LayStart[] starts =
        [
            .. SharedRepeat.Starts(request, first.Rows, second.Rows, tilts).OrderByDescending(s => s.Density).Take(effort.BandChoices),
        ];
        double[]?[] ends =
        [
            .. starts
                .AsParallel()
                .AsOrdered()
                .WithDegreeOfParallelism(2)
                .Select(s => LayoutPolisher.Polish(s.Model, effort.PolishSteps, effort.FirstTrust)),
        ];
        return starts.Zip(ends).Where(pair => pair.Second is not null)
            .Select(pair =>
                new LayCandidate(
                    pair.First.Method, [new LayoutBand
                    {
                        YFromMm = request.Usable.Low,
                        YToMm = request.Usable.High,
                        Repeat = pair.First.Build(pair.Second!),
                    }]))
            .MaxBy(candidate => candidate.Density);
    }

    private List<RowBand>? Polished(BandWidths widths, double[] chosen, bool oneTilt)
    {
        // What the grid left over goes to the first band.
        double spare = request.UsableWidthMm - chosen.Sum() - ((chosen.Length - 1) * request.GapMm);
        List<RowBand> bands = [];
        double y = request.Usable.Low;
        for (int i = 0; i < chosen.Length; i++)
        {
            double width = chosen[i] + (i == 0 ? spare : 0);
            if (widths.Rows(width) is not { } rows || Polished(y, y + width, rows, oneTilt) is not { } band)
            {
                return null;
            }

            bands.Add(band);
            y += width + request.GapMm;
        }

        for (int i = 0; i + 1 < bands.Count; i++)
        {
            (bands[i], bands[i + 1]) = Traded(bands[i], bands[i + 1], oneTilt);
        }

        return bands;
    }

    // The interface moves to where the two together give most: steps that halve whenever neither direction gains.
    private (RowBand Lower, RowBand Upper) Traded(RowBand lower, RowBand upper, bool oneTilt)
    {
        double step = TradeShare * reach;
        for (int n = 0; n < Trades; n++)
        {
            bool gained = false;
            foreach (double move in new[] { step, -step })
            {
                if (Polished(lower.Low, lower.High + move, lower.Rows, oneTilt) is { } low
                    && Polished(upper.Low + move, upper.High, upper.Rows, oneTilt) is { } high
                    && low.Density + high.Density > lower.Density + upper.Density)
                {
                    (lower, upper, gained) = (low, high, true);
                    break;
                }
            }

            step = gained ? step : step / 2;
        }

        return (lower, upper);
    }

    private RowBand? Polished(double low, double high, RowLattice near, bool oneTilt) =>
        RowBand.Polished(
            request, low, high, near, oneTilt ? new TiltRange { Least = near.Tilt, Most = near.Tilt, IsFree = false } : tilts, effort);
}
