using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Mixed;

namespace FeltNest.Layout.Free;

/// <summary>A general periodic search: every panel of a repeat moves on its own, overlaps are driven out on a repeat a little too short,
/// and what comes out is polished exactly.</summary>
/// <remarks>Started from the best rows and from scratch. It is kept only where it beats them.</remarks>
internal sealed class FreeSearch
{
    // How much shorter than the best the next repeat is tried.
    private static readonly double[] Shorter = [0.004, 0.0015];

    // Rows make a simpler die: a free lay is worth having only from this gain on.
    private const double LeastGain = 1 + 1e-4;

    // Tilts of the best lay that are used: with mirrors and half-turns four times as many angles, and fields for every two of them.
    private const int MostTilts = 2;

    // Repeats of the rows taken as one, at most.
    private const int MostTimes = 3;

    // Panels in a repeat, at most: beyond, the work per panel is too little to find anything.
    private const int MostPanels = 48;

    private readonly LayoutRequest request;
    private readonly SearchEffort effort;
    private readonly TiltRange tilts;
    private readonly CancellationToken stop;
    private readonly double size;

    private FreeSearch(LayoutRequest request, TiltRange tilts, SearchEffort effort, CancellationToken stop)
    {
        (this.request, this.tilts, this.effort, this.stop) = (request, tilts, effort, stop);
        size = request.Part.Outline.Points.Max(p => p.Length);
    }

    /// <summary>A lay denser than the best so far, or null.</summary>
    /// <param name="request">The run as the usable width.</param>
    /// <param name="tilts">Tilts allowed.</param>
    /// <param name="best">The best repeat so far.</param>
    /// <param name="hasHalfTurn">True when a half-turn changes nothing.</param>
    /// <param name="effort">Work to spend.</param>
    /// <param name="stop">Ends the search.</param>
    internal static LayCandidate? Better(
        LayoutRequest request, TiltRange tilts, LayoutRepeat best, bool hasHalfTurn, SearchEffort effort, CancellationToken stop) =>
        best.Panels.Count > MostPanels ? null : new FreeSearch(request, tilts, effort, stop).Run(best, hasHalfTurn);

    private LayCandidate? Run(LayoutRepeat best, bool hasHalfTurn)
    {
        FreeAngles angles = new(request, Angles(best, hasHalfTurn));
        double density = best.Panels.Count / best.LengthMm;

        // Searches side by side, each with its own random numbers, so that their order does not matter: one repeat of the rows and several,
        // which may then differ from each other.
        List<(string Method, Func<LayoutRepeat?> Run)> searches = [];
        for (int times = 1; times <= MostTimes && times * best.Panels.Count <= MostPanels; times++)
        {
            FreeLay rows = LayOf(best, times, angles);
            int seed = request.Seed + (2 * times);
            searches.Add(("free search from the best rows, polished", () => FromRows(angles, rows, density, new Random(seed))));
            searches.Add(("free search from scratch, polished", () => FromScratch(angles, rows, density, new Random(seed + 1))));
        }

        return searches.AsParallel().AsOrdered().WithDegreeOfParallelism(2).Select(search => (Repeat: search.Run(), search.Method))
            .Where(end => end.Repeat is not null)
            .Select(end =>
                new LayCandidate(
                    end.Method, [new LayoutBand { YFromMm = request.Usable.Low, YToMm = request.Usable.High, Repeat = end.Repeat! }]))
            .MaxBy(lay => lay.Density);
    }

    // Each shortening keeps the panels where they were found free; where it fails, the next is smaller.
    private LayoutRepeat? FromRows(FreeAngles angles, FreeLay lay, double density, Random random)
    {
        LayoutRepeat? best = null;
        FreeLay at = lay;
        for (int n = 0, k = 0; n < effort.FreeTries && k < Shorter.Length && !stop.IsCancellationRequested; n++)
        {
            FreeLay next = at.Stretched(at.Repeat * (1 - Shorter[k]));
            if (OverlapSearch.Separated(angles, next, size, random, effort.FreeWork, stop)
                && Polished(angles, next) is { } end
                && end.Panels.Count / end.LengthMm > density * LeastGain)
            {
                (best, density, at) = (end, end.Panels.Count / end.LengthMm, next.Stretched(end.LengthMm));
            }
            else
            {
                k++;
            }
        }

        return best;
    }

    private LayoutRepeat? FromScratch(FreeAngles angles, FreeLay like, double density, Random random)
    {
        LayoutRepeat? best = null;
        for (int n = 0; n < effort.FreeTries && !stop.IsCancellationRequested; n++)
        {
            // As many panels as the best has, and one or two fewer, on the repeat that would beat it by a little.
            int count = Math.Max(1, like.Count - (n % 3));
            double repeat = count / (density * (1 + Shorter[^1]));
            int[] angle = [.. Enumerable.Range(0, count).Select(_ => random.Next(angles.Values.Length))];
            FreeLay lay = new(
                repeat, [.. angle.Select(_ => random.NextDouble() * repeat)],
                [.. angle.Select(a => angles.Low[a] + (random.NextDouble() * Math.Max(0, angles.High[a] - angles.Low[a])))], angle);
            if (OverlapSearch.Separated(angles, lay, size, random, effort.FreeWork, stop)
                && Polished(angles, lay) is { } end
                && end.Panels.Count / end.LengthMm > density * LeastGain)
            {
                (best, density) = (end, end.Panels.Count / end.LengthMm);
            }
        }

        return best;
    }

    private LayoutRepeat? Polished(FreeAngles angles, FreeLay lay)
    {
        bool own = request.Rules.Rows == RowRule.Any;
        (double, double, double)[] free = own
            ?
            [
                .. lay.Angle.Select(a => (Tilt(angles.Values[a]), tilts.Least, tilts.Most)),
            ] : [(Tilt(angles.Values[0]), tilts.Least, tilts.Most)];
        MixedRow[] rows = [.. Enumerable.Range(0, lay.Count).Select(i =>
        {
            double value = angles.Values[lay.Angle[i]];
            double tilt = Tilt(value);
            bool mirrored = !own && Math.Abs(tilt - Tilt(angles.Values[0])) > 1e-9;
            return new MixedRow
            {
                Tilt = own ? i : 0,
                Factor = mirrored ? -1 : 1,
                Turn = value - tilt,
                At = new Point2(lay.X[i], lay.Y[i]),
                Copies = 1,
            };
        })];
        PoseModel model = RowModels.Mixed(request, lay.Repeat, free, rows);
        return LayoutPolisher.Polish(model, effort.PolishSteps, effort.FirstTrust) is { } end ? RowModels.Repeat(model, end) : null;
    }

    // The angles of the best lay and, where the rules allow them, their half-turns and mirror images.
    private double[] Angles(LayoutRepeat best, bool hasHalfTurn)
    {
        double[] used = [.. best.Panels.Select(p => double.DegreesToRadians(Math.Round(p.AngleDeg % 180, 6))).Distinct().Take(MostTilts)];
        IEnumerable<double> all = request.Rules.Rows == RowRule.Same
            ? used.Take(1)
            : used.Concat(used.Select(t => -t).Where(t => tilts.IsFree || (t >= tilts.Least && t <= tilts.Most)));
        double[] tilted = [.. all.Distinct()];
        return hasHalfTurn || request.Rules.OneWay ? tilted : [.. tilted, .. tilted.Select(t => t + Math.PI)];
    }

    private static double Tilt(double angle) => angle > Math.PI - 1e-9 ? angle - Math.PI : angle;

    private static FreeLay LayOf(LayoutRepeat repeat, int times, FreeAngles angles)
    {
        (PlacedPanel Panel, int Copy)[] all = [.. from k in Enumerable.Range(0, times) from p in repeat.Panels select (p, k)];
        return new FreeLay(
            times * repeat.LengthMm, [.. all.Select(a => a.Panel.XMm + (a.Copy * repeat.LengthMm))], [.. all.Select(a => a.Panel.YMm)],
            [.. all.Select(a => Nearest(angles, double.DegreesToRadians(a.Panel.AngleDeg)))]);
    }

    private static int Nearest(FreeAngles angles, double angle)
    {
        double turn = Math.PI;
        return Enumerable.Range(0, angles.Values.Length).MinBy(i => (
            Math.Round(Math.Abs(Math.IEEERemainder(angles.Values[i] - angle, turn)), 6),
            Math.Abs(Math.IEEERemainder(angles.Values[i] - angle, 2 * turn))));
    }
}
