using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows.Mixed;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Rows;

/// <summary>Row layouts over one run of cloth.</summary>
/// <remarks>Starts come from sampled step tables (all tilts, all row counts, pitch interpolated) and, where rows may mix, from a network
/// model of the row sequence solved with OR-Tools; the best are polished on exact distances in pitch, tilt, steps and phases together. The
/// classic one-row case is T. J. Nye,
/// <i>Stamping Strip Layout for Optimal Raw Material Utilization</i>, J. Manuf. Systems 19, 2000.</remarks>
internal sealed class RowSearch
{
    // Starts polished for each count of rows that is looked at besides, and how far tables may read too wide, as a share.
    private const int StartsPerCount = 2;
    private const double TablesRead = 0.01;

    private readonly LayoutRequest request;
    private readonly IProgress<SearchProgress>? progress;
    private readonly CancellationToken stop;
    private readonly SearchEffort effort;
    private readonly TiltRange tilts;
    private readonly List<LayCandidate> found = [];
    private readonly SortedDictionary<int, LayCandidate> byPanels = [];
    private LayStart? best;
    private double bestDensity;

    /// <param name="request">The run as the usable width.</param>
    /// <param name="progress">Told the best so far; may be null.</param>
    /// <param name="stop">Ends the search early, but never before a first layout.</param>
    internal RowSearch(LayoutRequest request, IProgress<SearchProgress>? progress, CancellationToken stop)
    {
        this.request = request;
        this.progress = progress;
        this.stop = stop;
        effort = SearchEffort.Of(request);
        tilts = TiltRange.Of(request.Rules);
        Tables = new RowTables(request, tilts, effort);
    }

    /// <summary>The sampled tables, for those who go on from here.</summary>
    internal RowTables Tables { get; }

    /// <summary>Panels per metre that rows of any tilt would give where the rule is stricter, or null when not better.</summary>
    internal double? FreerPanelsPerMetre { get; private set; }

    /// <summary>How much looser lays with another number of panels in a repeat are looked for, as a share; 0 looks for none.</summary>
    internal double FrontShare { get; init; }

    /// <summary>The densest lay found of every number of panels in a repeat; empty where none are looked for.</summary>
    internal IEnumerable<LayCandidate> Others => byPanels.Values;

    /// <summary>Every lay that was the best so far when it was found.</summary>
    internal IReadOnlyList<LayCandidate> Run()
    {
        PolishAll(Starts(), 0.1, 0.4);
        FreerPanelsPerMetre = Mixed();
        Shake();
        PolishOthers();
        return found;
    }

    // Row counts that the search for the densest lay left aside: they never change what that search finds.
    private void PolishOthers()
    {
        if (FrontShare <= 0 || bestDensity <= 0)
        {
            return;
        }

        LayStart[] starts =
        [
            .. Tables.Best(int.MaxValue - 1)
                .Where(rows => rows.Density * (1 + FrontShare) * (1 + TablesRead) >= bestDensity)
                .GroupBy(rows => rows.Rows)
                .SelectMany(count => count.Take(StartsPerCount))
                .Select(rows => LayStart.Of(request, rows, tilts)),
        ];
        foreach (LayStart[] pair in starts.Chunk(2))
        {
            if (stop.IsCancellationRequested)
            {
                return;
            }

            double[]?[] ends =
            [
                .. pair
                    .AsParallel()
                    .AsOrdered()
                    .WithDegreeOfParallelism(2)
                    .Select(s => LayoutPolisher.Polish(s.Model, effort.PolishSteps, effort.FirstTrust)),
            ];
            for (int k = 0; k < pair.Length; k++)
            {
                if (ends[k] is { } end)
                {
                    KeepByPanels(Candidate(pair[k], end));
                }
            }
        }
    }

    private void KeepByPanels(LayCandidate candidate)
    {
        int panels = candidate.Bands[0].Repeat.Panels.Count;
        if (FrontShare > 0 && (!byPanels.TryGetValue(panels, out LayCandidate? known) || candidate.Density > known.Density))
        {
            byPanels[panels] = candidate;
        }
    }

    private List<LayStart> Starts()
    {
        IEnumerable<RowLattice> parallel = request.Rules.Die is { } die
            ? Tables.Best(int.MaxValue - 1).Where(rows => FitsBed(rows.Tilt, die)).Take(effort.Starts) : Tables.Best(effort.Starts);
        List<LayStart> starts = [.. parallel.Select(rows => LayStart.Of(request, rows, tilts))];
        if (!request.Rules.OneWay && !Tables.HasHalfTurn)
        {
            starts.AddRange(PairedRows.Best(request, tilts, Math.PI, effort));
        }

        if (!tilts.IsFree)
        {
            starts.AddRange(PairedRows.Best(request, tilts, 0, effort));
        }

        return [.. starts.OrderByDescending(s => s.Density)];
    }

    // A single panel may be a die, so a bed forbids no more than the tilts at which the panel is too long or too wide for it.
    private bool FitsBed(double tilt, DieLimit die)
    {
        Outline turned = request.Part.Outline.Turned(tilt);
        return die.Holds(turned.MaxX - turned.MinX, turned.MaxY - turned.MinY);
    }

    private void PolishAll(List<LayStart> starts, double from, double to)
    {
        // Two at a time and taken in order, so that the winner does not depend on which thread was faster.
        for (int i = 0; i < starts.Count && (!stop.IsCancellationRequested || best is null); i += 2)
        {
            LayStart[] pair = [.. starts.Skip(i).Take(2)];
            double[]?[] ends =
            [
                .. pair
                    .AsParallel()
                    .AsOrdered()
                    .WithDegreeOfParallelism(2)
                    .Select(s => LayoutPolisher.Polish(s.Model, effort.PolishSteps, effort.FirstTrust)),
            ];
            for (int k = 0; k < pair.Length; k++)
            {
                Keep(pair[k], ends[k]);
            }

            progress?.Report(
                new SearchProgress
                {
                    Stage = "polishing rows",
                    PanelsPerMetre = 1000 * bestDensity,
                    Share = from + ((to - from) * (i + pair.Length) / starts.Count),
                });
        }
    }

    private void Keep(LayStart start, double[]? end)
    {
        if (end is null)
        {
            return;
        }

        LayCandidate candidate = Candidate(start, end);
        KeepByPanels(candidate);

        // A gain below this share is rounding: the earlier layout stays, which keeps results stable.
        if (candidate.Density > bestDensity * (1 + 1e-10) && IsStruck(candidate))
        {
            (best, bestDensity) = (start with { Model = start.Model with { Parameters = end } }, candidate.Density);
            found.Add(candidate);
        }
    }

    private LayCandidate Candidate(LayStart start, double[] end) => new(start.Method, [new LayoutBand
    {
        YFromMm = request.Usable.Low,
        YToMm = request.Usable.High,
        Repeat = start.Build(end),
    }]);

    private bool IsStruck(LayCandidate candidate) => request.Rules.Die is not { } die
        || candidate.Bands.All(b =>
            StrikeDivision.Divided(b.Repeat, StrikeDivision.Times(b.Repeat, request.Rules.LeastRepeatMm), [request.Part], die) is not null);

    // Rows of more than one tilt: part of the search where the rules allow it, else the answer to "what would freer rows gain".
    private double? Mixed()
    {
        RowRule wanted = request.Rules.Rows;
        double strict = bestDensity;
        List<LayStart> mixed = stop.IsCancellationRequested || (wanted == RowRule.Same && effort.FreerPolishes == 0)
            ? []
            : MixedRows.Best(request, Tables, tilts, effort, bestDensity, stop);
        if (wanted == RowRule.Any)
        {
            PolishAll(mixed, 0.4, 0.5);
            return null;
        }

        if (wanted == RowRule.Alternate)
        {
            PolishAll([.. mixed.Where(s => s.IsAlternate)], 0.4, 0.5);
            strict = bestDensity;
        }

        double freer = strict;
        foreach (LayStart start in mixed.Take(effort.FreerPolishes))
        {
            if (!stop.IsCancellationRequested && LayoutPolisher.Polish(start.Model, effort.PolishSteps, effort.FirstTrust) is { } end)
            {
                LayoutRepeat repeat = start.Build(end);
                freer = Math.Max(freer, repeat.Panels.Count / repeat.LengthMm);
            }
        }

        return freer > strict * (1 + 1e-6) ? 1000 * freer : null;
    }

    // Seeded restarts near the best: a wrong contact chosen by a start is shaken loose.
    private void Shake()
    {
        Random random = new(request.Seed);
        for (int i = 0; i < effort.Shakes && best is not null && !stop.IsCancellationRequested; i++)
        {
            LayStart start = best.Shaken(random, effort.FirstTrust, request.Part.Outline);
            Keep(start, LayoutPolisher.Polish(start.Model, effort.PolishSteps, effort.FirstTrust));
            progress?.Report(new SearchProgress
            {
                Stage = "shaking the best",
                PanelsPerMetre = 1000 * bestDensity,
                Share = 0.5 + (0.1 * (i + 1) / effort.Shakes),
            });
        }
    }
}
