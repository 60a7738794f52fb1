using FeltNest.Layout.Limits;
using FeltNest.Layout.Rows.Tables;
namespace FeltNest.Layout.Rows.Mixed;

/// <summary>The kinds of row a sequence may choose from: one part at several tilts, with the step tables of every two. In a repeat long
/// enough for it a kind stands several times in its row, evenly spaced.</summary>
internal sealed class RowKinds
{
    // A step below this share of the lower kind's height means that one row stands in the openings of the other: no row of its own.
    private const double LeastStepShare = 0.2;

    // A kind stands in a repeat as often as fits, unless that leaves each more than this share beyond its own pitch: then the repeat is not
    // for that kind.
    private const double LoosestPitch = 0.3;

    // How far beyond its own pitch the widest kind is stretched to make room for narrower ones.
    private const double LoosestWide = 1.05;

    private readonly TurnedPart[] kinds;
    private readonly StepTable[,] tables;
    private readonly double[] ownPitch;
    private readonly bool several;

    /// <param name="request">Part and roll.</param>
    /// <param name="tilts">Tilts, half-turns included.</param>
    /// <param name="effort">Work to spend.</param>
    /// <param name="several">True when a kind may stand several times in a repeat.</param>
    /// <param name="stop">Ends the work; the tables then serve nothing.</param>
    internal RowKinds(LayoutRequest request, double[] tilts, SearchEffort effort, bool several, CancellationToken stop)
    {
        this.several = several;
        Geometry.Outline part = request.Part.Outline;
        double extent = Math.Max(part.MaxX - part.MinX, part.MaxY - part.MinY);

        // Half the samples of the parallel rows: pairs of kinds are many, and their best are polished anyway.
        double grid = (extent + request.GapMm) / (effort.Samples / 2.0);
        kinds = [.. tilts.Select(t => TurnedPart.Make(part, t, grid, request.GapMm))];
        ownPitch = [.. kinds.Select(kind => new TiltRows(kind).OwnPitch)];
        tables = new StepTable[tilts.Length, tilts.Length];
        Parallel.For(0, tilts.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            for (int k = 0; k < tilts.Length && !stop.IsCancellationRequested; k++)
            {
                tables[i, k] = StepTable.Make(kinds[i], kinds[k]);
            }
        });
    }

    /// <summary>How many kinds.</summary>
    internal int Count => kinds.Length;

    /// <summary>Tilt of a kind, radians, its half-turn included.</summary>
    internal double Tilt(int kind) => kinds[kind].Tilt;

    /// <summary>The half-turn in a kind's tilt: pi or 0.</summary>
    internal double Turn(int kind) => kinds[kind].Tilt >= Math.PI ? Math.PI : 0;

    /// <summary>How far a kind reaches below its row line, mm.</summary>
    internal double Bottom(int kind) => -kinds[kind].MinY;

    /// <summary>Repeats worth a look, <paramref name="step"/> mm apart: from the least own pitch of any kind to the greatest; where kinds
    /// stand several times, those in which the widest kind stands close, once or twice.</summary>
    internal double[] Pitches(double step)
    {
        double least = ownPitch.Min();
        double most = ownPitch.Max();
        return several ? [.. Between(most, LoosestWide * most), .. Between(2 * most, 2 * LoosestWide * most)] : Between(least, most);

        double[] Between(double from, double to) =>
            [.. Enumerable.Range(0, 1 + (int)Math.Ceiling((to - from) / step)).Select(i => from + (i * step))];
    }

    // 0 where the kind does not fit the repeat.
    private int Copies(double own, double pitch, double grid)
    {
        int most = (int)Math.Floor((pitch + grid) / own);
        if (!several)
        {
            return Math.Min(1, most);
        }

        if (most > 0 && pitch / most > (1 + LoosestPitch) * own)
        {
            return 0;
        }

        return most;
    }

    // Two rows evenly spaced m and n times in a repeat meet as two rows spaced by the least common multiple of m and n do.
    private static int CommonCopies(int m, int n)
    {
        int a = m;
        int b = n;
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return m / a * n;
    }

    /// <summary>Least steps between kinds at one pitch; kinds that do not fit the pitch are left out.</summary>
    internal RowSteps StepsAt(double pitch)
    {
        int n = kinds.Length;
        int[] copies = [.. ownPitch.Select((own, i) => Copies(own, pitch, kinds[i].Grid))];
        (double Step, double Shift)[,] between = new (double, double)[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < n; k++)
            {
                between[i, k] = copies[i] > 0 && copies[k] > 0
                    ? tables[i, k].LeastOverRow(pitch / CommonCopies(copies[i], copies[k])) : (double.PositiveInfinity, 0);
                if (between[i, k].Step < LeastStepShare * Math.Min(kinds[i].Height, kinds[k].Height))
                {
                    between[i, k].Step = double.PositiveInfinity;
                }
            }
        }

        double[] bottoms = [.. kinds.Select((p, i) => copies[i] > 0 ? -p.MinY : double.PositiveInfinity)];
        return new RowSteps(
            between, copies, bottoms, [.. kinds.Select(p => p.MaxY)],
            (
                a, b,
                c) => tables[a, c].AtRow(
                    between[a, b].Shift + between[b, c].Shift, pitch / CommonCopies(copies[a], copies[c])) > between[a, b].Step
                        + between[b, c].Step + tables[a, c].Grid);
    }
}
