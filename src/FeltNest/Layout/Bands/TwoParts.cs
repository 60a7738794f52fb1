using System.Globalization;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Bands;

/// <summary>Two parts in one width: the first in the lower band, the second in the upper one, each of parallel rows with its own
/// repeat.</summary>
internal sealed class TwoParts
{
    // Widths tried for the interface, evenly over the run, and how many of the best are polished.
    private const int Widths = 700;
    private const int Polished = 6;
    private const int Spread = 4;

    // First step of the interface as a share of a row's height, and steps and halvings together, when a share is wanted; how near it must
    // be met, points.
    private const double Reach = 0.2;
    private const int Halvings = 24;
    private const double ShareSlackPercent = 0.05;

    private readonly LayoutRequest request;
    private readonly SecondPart second;
    private readonly LayoutRequest other;
    private readonly TiltRange tilts;
    private readonly TiltRange otherTilts;
    private readonly SearchEffort effort;
    private readonly SearchEffort otherEffort;
    private readonly double room;
    private readonly double flattest;
    private readonly BandWidths first;
    private readonly BandWidths upper;

    /// <summary>The best splits of a run, best first; none where the two do not fit side by side.</summary>
    /// <param name="request">The run as the usable width.</param>
    /// <param name="second">The second part.</param>
    /// <param name="tables">Tables of the first part.</param>
    /// <param name="stop">Ends the search with what is found.</param>
    internal static IReadOnlyList<LayCandidate> Best(LayoutRequest request, SecondPart second, RowTables tables, CancellationToken stop)
    {
        return new TwoParts(request, second, tables).Best(stop);
    }

    private TwoParts(LayoutRequest request, SecondPart second, RowTables tables)
    {
        (this.request, this.second) = (request, second);
        other = request with { Part = second.Part, Rules = request.Rules with { WarpAngleDeg = second.Part.WarpAngleDeg } };
        tilts = TiltRange.Of(request.Rules);
        otherTilts = TiltRange.Of(other.Rules);
        effort = SearchEffort.Of(request);
        otherEffort = SearchEffort.Of(other);
        room = request.UsableWidthMm;
        flattest = tilts.Flattest(request.Part.Outline).Height;
        first = BandWidths.Of(BandWidths.Curves(tables), room, Widths);
        upper = BandWidths.Of(BandWidths.Curves(new RowTables(other, otherTilts, otherEffort)), room, Widths);
    }

    private List<LayCandidate> Best(CancellationToken stop)
    {
        List<LayCandidate> found = [];
        foreach ((_, double split) in Splits()
            .OrderByDescending(s => s.Worth)
            .ThenBy(s => s.Split)
            .Where((_, n) => n % Spread == 0)
            .Take(Polished))
        {
            if ((!stop.IsCancellationRequested || found.Count == 0)
                && first.Rows(split) is { } below
                && upper.Rows(room - request.GapMm - split) is { } above
                && Laid(split, below, above) is { } bands)
            {
                found.Add(Joined(second.SharePercent is { } share ? Shifted(bands, share / 100) : bands));
            }
        }

        return second.SharePercent is { } wanted ? Kept(found, wanted) : found;
    }

    // Heights of the interface at which both parts have rows, and what they are worth.
    private List<(double Worth, double Split)> Splits()
    {
        double spacing = room / Widths;
        List<(double Worth, double Split)> splits = [];
        for (int i = 1; i < Widths; i++)
        {
            // Index of the widest upper band beside a lower one of i spacings.
            int k = (int)Math.Floor((room - request.GapMm - (i * spacing)) / spacing);
            if (k > 0 && first.Densities[i] > 0 && upper.Densities[k] > 0 && (second.SharePercent is not null || k * spacing < flattest))
            {
                splits.Add((Worth(first.Densities[i], upper.Densities[k]), i * spacing));
            }
        }

        return splits;
    }

    // Good area for filling; for a wanted share the panels of the rarer kind, counted in the wanted proportion.
    private double Worth(double one, double two) => second.SharePercent is { } share
        ? Math.Min(one / (1 - (share / 100)), two / (share / 100)) : (one * request.Part.AreaMm2) + (two * second.Part.AreaMm2);

    private (RowBand Low, RowBand High)? Laid(double split, RowLattice below, RowLattice above)
    {
        double side = request.Usable.Low + split;
        return RowBand.Polished(request, request.Usable.Low, side, below, tilts, effort) is { } low
            && RowBand.Polished(other, side + request.GapMm, request.Usable.High, above, otherTilts, otherEffort) is { } high
                ? (low, high)
                : null;
    }

    // With the row counts kept, the share of the second falls steadily as the interface rises: halving finds the wanted one.
    private (RowBand Low, RowBand High) Shifted((RowBand Low, RowBand High) bands, double share)
    {
        double step = Reach * flattest;
        for (int n = 0; n < Halvings; n++)
        {
            double off = ShareOf(bands) - share;
            double split = bands.Low.High - request.Usable.Low + (off > 0 ? step : -step);
            (RowBand Low, RowBand High)? next = Laid(split, bands.Low.Rows, bands.High.Rows);
            if (next is { } moved && Math.Abs(ShareOf(moved) - share) < Math.Abs(off))
            {
                bands = moved;
            }
            else
            {
                step /= 2;
            }
        }

        return bands;
    }

    // Only lays that have the wanted share count; the nearest says what could be had.
    private static List<LayCandidate> Kept(List<LayCandidate> found, double wanted)
    {
        double Of(LayCandidate lay) => 100 * lay.Bands[1].Repeat.Panels.Count / lay.Bands[1].Repeat.LengthMm / lay.Density;
        List<LayCandidate> kept = [.. found.Where(lay => Math.Abs(Of(lay) - wanted) <= ShareSlackPercent)];
        return kept.Count > 0 || found.Count == 0 ? kept : throw new NoAnswerException(string.Create(
            CultureInfo.InvariantCulture,
            $"a share of {wanted:0.###} % of the second part cannot be met in this width: the nearest found is "
                + $"{found.Select(Of).MinBy(share => Math.Abs(share - wanted)):0.##} %"));
    }

    private static double ShareOf((RowBand Low, RowBand High) bands) => bands.High.Density / (bands.Low.Density + bands.High.Density);

    private static LayCandidate Joined((RowBand Low, RowBand High) bands) => new(
        "two parts, each in its own band of parallel rows, polished",
        [
            new LayoutBand { YFromMm = bands.Low.Low, YToMm = bands.Low.High, Repeat = bands.Low.Repeat },
            new LayoutBand
            {
                YFromMm = bands.High.Low,
                YToMm = bands.High.High,
                Repeat = bands.High.Repeat with { Panels = [.. bands.High.Repeat.Panels.Select(p => p with { Part = 1 })] },
            },
        ]);
}
