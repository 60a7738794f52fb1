using FeltNest.Seam;

namespace FeltNest.Panel.Trial;

/// <summary>How the gap at each place answers to each unknown of a trial wrap.</summary>
internal sealed class TrialColumns
{
    /// <summary>Unknowns of the placing of one ball: along, across, turn; they come first.</summary>
    public const int Placing = 3;

    // Unknowns of one ball that no panel can mend: placing and unlike; with places enough two waves three times round as well, as felt
    // pulled harder at one end leaves them.
    private const int Fewest = Placing + 1;
    private const int Most = Fewest + 2;

    // Places of each ball from which on those two are sought: they leave the noise freedoms enough.
    private const int PlacesForMost = 12;

    // Share of a wave's square that must be left beside all the others for the places to tell it.
    private const double Told = 0.05;

    // Waves that identical centred panels can show, the broadest first: kept by s to pi/2 - s and by s to s + pi.
    private static readonly EdgeWave[] Mirrored = [new(0, false, 1), new(4, false, 1), new(8, false, 1)];
    private static readonly EdgeWave[] Unmirrored = [new(0, false, 1), new(4, false, 1), new(6, true, 1), new(8, false, 1)];

    private readonly SeamCurve seam;
    private readonly double tip;

    private TrialColumns(SeamCurve seam, IReadOnlyList<EdgeWave> waves, int ofBall)
    {
        this.seam = seam;
        Waves = waves;
        OfBall = ofBall;
        tip = seam.At(Math.PI / 2).Point.X;
    }

    /// <summary>Unknowns of one ball, which come before the waves.</summary>
    public int OfBall { get; }

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
        bool enough = balls.Values.All(places => places.Length >= PlacesForMost);
        TrialColumns rich = new(seam, wanted, Most);
        TrialColumns all = enough && balls.Values.All(places => rich.Untold(places).Count == 0) ? rich : new(seam, wanted, Fewest);
        HashSet<int> told = [.. Enumerable.Range(0, wanted.Length)];
        foreach ((string ball, int[] places) in balls)
        {
            if (all.Untold(places).Count > 0)
            {
                throw new InputException(
                    null, null, $"ball '{ball}': its places cannot tell panel from placing: read further places, spread round the seam");
            }

            told.IntersectWith(all.TellableBy(places).Select(column => column - all.OfBall));
        }

        return new TrialColumns(seam, [.. wanted.Where((_, i) => told.Contains(i))], all.OfBall);
    }

    /// <summary>The row of a place: mm of gap for a mm of each unknown.</summary>
    public double[] Row(int place)
    {
        double s = TrialPlaces.S(place);
        SeamJet jet = seam.At(s);
        SpherePoint along = 1 / jet.Speed * jet.First;
        double[] thrice = OfBall == Most ? [Math.Cos(3 * s), Math.Sin(3 * s)] : [];
        return [-along.Y, along.X, -along.Z / tip, Math.Cos(2 * s), .. thrice, .. Waves.Select(wave => wave.ShapeAt(s))];
    }

    // Columns of the ball, and the same gap all round, that the places do not tell.
    private List<int> Untold(int[] places) => [.. Enumerable.Range(0, OfBall + 1).Except(TellableBy(places))];

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
