using FeltNest.Layout.Bands;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Scan;

/// <summary>Parallel rows over many widths from one set of tables: what a die designed anew for each width gives, and where its best number
/// of rows changes.</summary>
/// <remarks>Step tables and pitch curves do not depend on the width, so they are made once; every width then costs a few polishes. The best
/// of every row count is kept apart, as each is smooth in the width while the best of all is a saw-tooth.</remarks>
internal sealed class WidthScan
{
    // Starts polished for a width: the most promising row counts and tilts; tables rank them wrongly by up to a per cent.
    private const int Starts = 4;

    // Tilts nearer than this, radians, lead to the same end when polished.
    private const double OtherFamily = 0.15;

    // How exactly a crossover is found, mm.
    private const double Exact = 0.02;

    private readonly LayoutRequest request;
    private readonly TiltRange tilts;
    private readonly SearchEffort effort;
    private readonly PitchCurve[] curves;

    /// <param name="request">Part, gap, trims and rules; its width is the widest that will be asked for.</param>
    /// <exception cref="InputException">A number out of its range.</exception>
    /// <exception cref="NoAnswerException">The part fits the widest roll at no allowed tilt.</exception>
    public WidthScan(LayoutRequest request)
    {
        LayoutLimits.Require(request);
        this.request = request with { Rules = request.Rules with { Rows = RowRule.Same } };
        tilts = TiltRange.Of(request.Rules);
        effort = SearchEffort.Of(request);
        curves = BandWidths.Curves(new RowTables(this.request, tilts, effort));
    }

    /// <summary>The best parallel rows of a width, or null where the part does not fit. Not yet checked: <see cref="Check.LayoutCheck"/>
    /// does that.</summary>
    public RollLayout? At(double widthMm) => Front(widthMm, together: 2) is [RollLayout first, ..] ? first : null;

    /// <summary>The best parallel rows of a width for every count of rows that was looked at, densest first; empty where the part does not
    /// fit. Not yet checked.</summary>
    /// <param name="widthMm">The width.</param>
    /// <param name="together">Starts polished side by side: 1 where widths are laid side by side already, as work that waits for other
    /// work keeps a core idle.</param>
    public IReadOnlyList<RollLayout> Front(double widthMm, int together = 1)
    {
        LayoutRequest run = request with { RollWidthMm = widthMm };
        if (run.UsableWidthMm < tilts.Flattest(request.Part.Outline).Height)
        {
            return [];
        }

        RollLayout[] lays =
        [
            .. Bands(widthMm, together)
                .OrderByDescending(band => band.Density)
                .DistinctBy(band => band.Repeat.Panels.Count)
                .Select(band => Laid(
                    widthMm, new LayCandidate(
                        "parallel rows, polished",
                        [new LayoutBand { YFromMm = band.Low, YToMm = band.High, Repeat = band.Repeat }]))),
        ];

        // Parts that no start settles for still have their boxes.
        return lays.Length > 0 ? lays : [Laid(widthMm, BoxRows.Lay(run, tilts))];
    }

    private RollLayout Laid(double widthMm, LayCandidate lay) => new()
    {
        Parts = [request.Part],
        RollWidthMm = widthMm,
        Trims = request.Trims,
        GapMm = request.GapMm,
        Rules = request.Rules,
        Bands = lay.Bands,
        Search = new SearchRecord
        {
            Seed = request.Seed,
            Effort = request.Effort,
            CutShort = false,
            Method = lay.Method,
            ProvedOnGrid = null,
            PlaneUtilisationPercent = 0,
            LeastGapMm = 0,
            FreerRowsPanelsPerMetre = null,
        },
    };

    /// <summary>Widths at which the best number of rows changes, between neighbours of a list of widths that were scanned.</summary>
    /// <param name="scanned">Widths, least first, with the number of rows that was best.</param>
    public IReadOnlyList<Crossover> Crossovers(IReadOnlyList<(double WidthMm, int Rows)> scanned)
    {
        ArgumentNullException.ThrowIfNull(scanned);
        List<Crossover> found = [];
        for (int i = 0; i + 1 < scanned.Count; i++)
        {
            Between(scanned[i], scanned[i + 1], found);
        }

        return found;
    }

    // Halved until two widths are as near as asked; a third number of rows in between is followed into both halves.
    private void Between((double WidthMm, int Rows) low, (double WidthMm, int Rows) high, List<Crossover> found)
    {
        if (low.Rows == high.Rows)
        {
            return;
        }

        double middle = (low.WidthMm + high.WidthMm) / 2;
        if (high.WidthMm - low.WidthMm <= Exact)
        {
            found.Add(new Crossover { WidthMm = middle, RowsBelow = low.Rows, RowsAbove = high.Rows });
            return;
        }

        int rows = Best(middle)?.Rows.Rows ?? 0;
        Between(low, (middle, rows), found);
        Between((middle, rows), high, found);
    }

    private RowBand? Best(double width) => Bands(width, together: 2).MaxBy(band => band.Density);

    private List<RowBand> Bands(double width, int together)
    {
        LayoutRequest run = request with { RollWidthMm = width };
        if (run.UsableWidthMm <= 0)
        {
            return [];
        }

        List<(PitchCurve Curve, int Rows, double Density)> all =
        [
            .. curves
                .SelectMany(c => c.Fits(run.UsableWidthMm).Select(f => (c, f.Rows, f.Rows / f.Pitch)))
                .OrderByDescending(f => f.Item3)
                .ThenBy(f => f.c.Tilt),
        ];
        List<(PitchCurve Curve, int Rows, double Density)> starts = [];
        foreach ((PitchCurve Curve, int Rows, double Density) start in all)
        {
            if (starts.Count < Starts
                && starts.TrueForAll(s =>
                    s.Rows != start.Rows || Math.Abs(Math.IEEERemainder(s.Curve.Tilt - start.Curve.Tilt, Math.PI)) > OtherFamily))
            {
                starts.Add(start);
            }
        }

        return
        [
            .. starts.AsParallel().AsOrdered().WithDegreeOfParallelism(together)
                .Select(s =>
                    s.Curve.Lattice(s.Rows, run.UsableWidthMm) is { } near
                        ? RowBand.Polished(run, run.Usable.Low, run.Usable.High, near, tilts, effort, isNear: true)
                        : null)
                .OfType<RowBand>(),
        ];
    }
}
