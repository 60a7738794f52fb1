using FeltNest.Seam;

namespace FeltNest.Panel.Trial;

/// <summary>How the gap at each place answers to each unknown of a trial wrap.</summary>
internal sealed class TrialColumns
{
    /// <summary>Unknowns of one ball that no panel can mend: along, across, turn, unlike; they come first.</summary>
    public const int OfBall = 4;

    // Share of a wave's square that must be left beside all the others for the places to tell it.
    private const double Told = 0.05;

    // Waves that identical centred panels can show, the broadest first: kept by s to pi/2 - s and by s to s + pi.
    private static readonly EdgeWave[] Mirrored = [new(0, false, 1), new(4, false, 1), new(8, false, 1)];
    private static readonly EdgeWave[] Unmirrored = [new(0, false, 1), new(4, false, 1), new(6, true, 1), new(8, false, 1)];

    private readonly SeamCurve seam;
    private readonly double tip;

    private TrialColumns(SeamCurve seam, IReadOnlyList<EdgeWave> waves)
    {
        this.seam = seam;
        Waves = waves;
        tip = seam.At(Math.PI / 2).Point.X;
    }

    /// <summary>Waves of the gap that panels can mend and the places can tell.</summary>
    public IReadOnlyList<EdgeWave> Waves { get; }

    /// <summary>The columns that the places of every ball can tell.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="mirrored">Whether the panel has both mirrors.</param>
    /// <param name="balls">Places read on each ball.</param>
    /// <exception cref="InputException">The places of a ball cannot tell panel from placing.</exception>
    public static TrialColumns Of(SeamCurve seam, bool mirrored, IReadOnlyDictionary<string, int[]> balls)
    {
        EdgeWave[] wanted = mirrored ? Mirrored : Unmirrored;
        TrialColumns all = new(seam, wanted);
        HashSet<int> told = [.. Enumerable.Range(0, wanted.Length)];
        foreach ((string ball, int[] places) in balls)
        {
            IReadOnlyList<int> here = all.TellableBy(places);
            if (Enumerable.Range(0, OfBall + 1).Except(here).Any())
            {
                throw new InputException(
                    null, null, $"ball '{ball}': its places cannot tell panel from placing: read further places, spread round the seam");
            }

            told.IntersectWith(here.Select(column => column - OfBall));
        }

        return new TrialColumns(seam, [.. wanted.Where((_, i) => told.Contains(i))]);
    }

    /// <summary>The row of a place: mm of gap for a mm of each unknown.</summary>
    public double[] Row(int place)
    {
        double s = TrialPlaces.S(place);
        SeamJet jet = seam.At(s);
        SpherePoint along = 1 / jet.Speed * jet.First;
        return [-along.Y, along.X, -along.Z / tip, Math.Cos(2 * s), .. Waves.Select(wave => wave.ShapeAt(s))];
    }

    // Columns that the places tell beside those before them.
    private List<int> TellableBy(int[] places)
    {
        double[][] rows = [.. places.Select(Row)];
        List<double[]> kept = [];
        List<int> told = [];
        for (int column = 0; column < rows[0].Length; column++)
        {
            double[] left = [.. rows.Select(row => row[column])];
            double whole = left.Sum(v => v * v);
            foreach (double[] other in kept)
            {
                double share = left.Zip(other, (a, b) => a * b).Sum();
                left = [.. left.Zip(other, (a, b) => a - (share * b))];
            }

            double rest = left.Sum(v => v * v);
            if (rest > Told * whole)
            {
                kept.Add([.. left.Select(v => v / Math.Sqrt(rest))]);
                told.Add(column);
            }
        }

        return told;
    }
}
