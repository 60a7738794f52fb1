using FeltNest.Layout.Rows.Tables;
namespace FeltNest.Layout.Rows.Mixed;

/// <summary>The kinds of row a sequence may choose from: one part at several tilts, with the step tables of every two.</summary>
internal sealed class RowKinds
{
    // A step below this share of the lower kind's height means that one row stands in the openings of the other: no row of its own.
    private const double LeastStepShare = 0.2;

    private readonly TurnedPart[] kinds;
    private readonly StepTable[,] tables;
    private readonly double[] ownPitch;

    internal RowKinds(LayoutRequest request, double[] tilts, SearchEffort effort)
    {
        Geometry.Outline part = request.Part.Outline;
        double extent = Math.Max(part.MaxX - part.MinX, part.MaxY - part.MinY);

        // Half the samples of the parallel rows: pairs of kinds are many, and their best are polished anyway.
        double grid = (extent + request.GapMm) / (effort.Samples / 2.0);
        kinds = [.. tilts.Select(t => TurnedPart.Make(part, t, grid, request.GapMm))];
        ownPitch = [.. kinds.Select(kind => new TiltRows(kind).OwnPitch)];
        tables = new StepTable[tilts.Length, tilts.Length];
        Parallel.For(0, tilts.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            for (int k = 0; k < tilts.Length; k++)
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

    /// <summary>Pitches worth a look, from the least own pitch of any kind to the greatest, <paramref name="step"/> mm apart.</summary>
    internal double[] Pitches(double step)
    {
        double least = ownPitch.Min(), most = ownPitch.Max();
        return [.. Enumerable.Range(0, 1 + (int)Math.Ceiling((most - least) / step)).Select(i => least + (i * step))];
    }

    /// <summary>Least steps between kinds at one pitch; kinds that do not fit the pitch are left out.</summary>
    internal RowSteps StepsAt(double pitch)
    {
        int n = kinds.Length;
        (double Step, double Shift)[,] between = new (double, double)[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < n; k++)
            {
                bool fits = ownPitch[i] <= pitch + tables[i, k].Grid && ownPitch[k] <= pitch + tables[i, k].Grid;
                between[i, k] = fits ? tables[i, k].LeastOverRow(pitch) : (double.PositiveInfinity, 0);
                if (between[i, k].Step < LeastStepShare * Math.Min(kinds[i].Height, kinds[k].Height))
                {
                    between[i, k].Step = double.PositiveInfinity;
                }
            }
        }

        double[] bottoms = [.. kinds.Select((p, i) => ownPitch[i] <= pitch + p.Grid ? -p.MinY : double.PositiveInfinity)];
        return new RowSteps(
            between, bottoms, [.. kinds.Select(p => p.MaxY)],
            (a, b, c) => tables[a, c].AtRow(between[a, b].Shift + between[b, c].Shift, pitch) > between[a, b].Step + between[b, c].Step + tables[a, c].Grid);
    }
}
