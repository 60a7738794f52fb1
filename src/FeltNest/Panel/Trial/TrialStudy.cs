using FeltNest.Ball;
using FeltNest.Numerics;
using static FeltNest.Panel.Trial.SmallSquares;

namespace FeltNest.Panel.Trial;

/// <summary>From the readings of a trial wrap to what they show and what the drawing can mend.</summary>
/// <remarks>Least squares ball by ball, the balls then joined by their weights. Where the balls differ by more than the noise of one ball,
/// the spread over the balls takes the place of that noise (R. T. Birge, Phys. Rev. 40, 1932, page 207).</remarks>
internal static class TrialStudy
{
    // Chance left outside the intervals, on both sides together.
    private const double Outside = 0.05;

    /// <summary>Studies readings.</summary>
    /// <exception cref="InputException">Too few places to tell panel from placing.</exception>
    public static TrialFinding Run(BallSpec ball, IReadOnlyList<TrialReading> readings)
    {
        PanelRequest panel = PanelRequest.For(ball);
        bool mirrored = panel.Seam.IsMirrorSymmetric && panel.Law.IsMirrorSymmetric;
        ILookup<string, TrialReading> byBall = readings.ToLookup(reading => reading.Ball);
        TrialColumns columns = TrialColumns.Of(
            panel.Seam, mirrored, byBall.ToDictionary(group => group.Key, group => group.Select(r => r.Place).ToArray()));
        double aim = panel.SeamGapMm;
        (string Name, TrialReading[] Read, SmallSquares Fit)[] fits = [.. byBall.Select(group =>
            (group.Key, group.ToArray(),
                Of([.. group.Select(r => columns.Row(r.Place))], [.. group.Select(r => r.GapMm - aim)])))];
        Joined joined = new([.. fits.Select(fit => fit.Fit)], columns);
        (TrialAmount? seam, int waists) = Seam(ball, panel, readings, joined.Noise);
        TrialPart[] parts = [.. columns.Waves.Select((wave, i) =>
            new TrialPart(wave with { AmountMm = joined.Parts[i] }, joined.Amount(Unit(i, columns.Waves.Count))))];
        TrialFinding found = new()
        {
            AimMm = aim,
            Parts = parts,
            Seam = seam,
            Waists = waists,
            Balls = [.. fits.Select(fit => Placing(fit.Name, fit.Read.Length, fit.Fit, joined))],
            Places = [],
            NoiseMm = joined.Noise.Mm,
            Freedom = joined.Noise.Freedom,
            Panel = joined.Test(),
            Placing = OfBalls(fits.Select(fit => fit.Fit), 0, TrialColumns.Placing, joined),
            Unlike = OfBalls(
                fits.Select(fit => fit.Fit), TrialColumns.Placing, columns.OfBall - TrialColumns.Placing, joined),
            BallsDiffer = joined.Differ,
        };
        return found with
        {
            Places = [.. Enumerable.Range(1, TrialPlaces.Count).Select(place => Place(place, found, columns, readings, joined))],
        };
    }

    private static TrialPlace Place(
        int number, TrialFinding found, TrialColumns columns, IReadOnlyList<TrialReading> readings, Joined joined)
    {
        double s = TrialPlaces.S(number);
        double[] read = [.. readings.Where(r => r.Place == number).Select(r => r.GapMm)];
        TrialAmount panel = joined.Amount([.. columns.Waves.Select(wave => wave.ShapeAt(s))]);
        double share = found.Panel.Found ? 0.5 : 0;
        double move = Math.Abs(Math.Cos(2 * s));
        TrialAmount seam = found.SeamMoved ? found.Seam! : TrialAmount.None;
        return new TrialPlace
        {
            Number = number,
            S = s,
            Readings = read.Length,
            ReadMm = read.Length == 0 ? null : read.Average(),
            Fitted = panel with { Mm = found.AimMm + panel.Mm },
            Correction = new TrialAmount
            {
                Mm = found.Correction.Sum(wave => wave.At(s)),
                SpreadMm = double.Hypot(share * panel.SpreadMm, move * seam.SpreadMm),
                IntervalMm = double.Hypot(share * panel.IntervalMm, move * seam.IntervalMm),
            },
        };
    }

    private static TrialPlacing Placing(string name, int readings, SmallSquares fit, Joined joined)
    {
        TrialAmount At(int i) => joined.Noise.Amount(fit.Solution[i], Math.Sqrt(fit.Covariance[i, i]));
        return new TrialPlacing
        {
            Ball = name,
            Readings = readings,
            Along = At(0),
            Across = At(1),
            Turn = At(2),
            Unlike = At(3),
            LeftRmsMm = Math.Sqrt(fit.LeftSquares / readings),
        };
    }

    // Whether a block of the balls' own unknowns is more than noise, over all balls together.
    private static TrialTest OfBalls(IEnumerable<SmallSquares> fits, int first, int count, Joined joined)
    {
        double squares = 0;
        int freedoms = 0;
        foreach (SmallSquares fit in fits)
        {
            squares += Square(Inverse(Block(fit.Covariance, first, count)), fit.Solution[first..(first + count)]);
            freedoms += count;
        }

        return joined.Noise.Test(squares, freedoms);
    }

    // The middle of the seam lies off by half of what the waists are too wide; a tape on the felt's outer face sees the larger sphere.
    private static (TrialAmount? Move, int Count) Seam(BallSpec ball, PanelRequest panel, IReadOnlyList<TrialReading> readings, Noise noise)
    {
        double inwards = 2 * panel.RadiusMm / ball.FinishedDiameterMm;
        double wanted = TrialPlaces.OuterWaistMm(ball);
        double[] moves = [.. readings.Select(r => r.WaistMm).OfType<double>().Select(w => (w - wanted) * inwards / 2)];
        if (moves.Length == 0)
        {
            return (null, 0);
        }

        double mean = moves.Average();
        if (moves.Length == 1)
        {
            // One width alone has no spread of its own: it is taken to be read as well as a gap.
            return (noise.Amount(mean, 0.5), 1);
        }

        double spread = Math.Sqrt(moves.Sum(m => (m - mean) * (m - mean)) / (moves.Length - 1) / moves.Length);
        TrialAmount found = new()
        {
            Mm = mean,
            SpreadMm = spread,
            IntervalMm = spread * FDistribution.Student(Outside, moves.Length - 1),
        };
        return (found, moves.Length);
    }

    private static double[] Unit(int at, int count) => [.. Enumerable.Range(0, count).Select(i => i == at ? 1.0 : 0)];

    // The noise of a reading with its freedoms.
    private sealed record Noise(double Mm, int Freedom)
    {
        private readonly Lazy<double> factor = new(() => FDistribution.Student(Outside, Freedom));

        public TrialAmount Amount(double mm, double atUnit) => new()
        {
            Mm = mm,
            SpreadMm = Mm * atUnit,
            IntervalMm = Mm * atUnit * factor.Value,
        };

        public TrialTest Test(double squares, int freedoms)
        {
            double ratio = Mm > 0 ? squares / freedoms / (Mm * Mm) : Exact(squares);
            return new TrialTest
            {
                Ratio = ratio,
                Above = freedoms,
                Below = Freedom,
                Chance = FDistribution.Tail(ratio, freedoms, Freedom),
            };
        }

        // Readings that leave nothing have no noise to be tested against.
        private static double Exact(double squares) => squares > 0 ? double.MaxValue : 0;
    }

    // What all balls say together of the parts that panels share.
    private sealed class Joined
    {
        private readonly double[,] weight;
        private readonly double[,] covariance;
        private readonly Noise ofParts;

        public Joined(IReadOnlyList<SmallSquares> fits, TrialColumns columns)
        {
            int parts = columns.Waves.Count;
            weight = new double[parts, parts];
            double[] right = new double[parts];
            (double[,] Weight, double[] Parts)[] each = [.. fits.Select(fit =>
                (Inverse(Block(fit.Covariance, columns.OfBall, parts)), fit.Solution[columns.OfBall..]))];
            foreach ((double[,] own, double[] found) in each)
            {
                double[] pulled = Times(own, found);
                for (int i = 0; i < parts; i++)
                {
                    right[i] += pulled[i];
                    for (int j = 0; j < parts; j++)
                    {
                        weight[i, j] += own[i, j];
                    }
                }
            }

            covariance = Inverse(weight);
            Parts = Times(covariance, right);
            double left = fits.Sum(fit => fit.LeftSquares);
            int freedom = fits.Sum(fit => fit.Freedom);
            Noise = new Noise(Math.Sqrt(left / freedom), freedom);
            int between = parts * (fits.Count - 1);
            if (between == 0)
            {
                ofParts = Noise;
                return;
            }

            double apart = each.Sum(ball => Square(ball.Weight, [.. ball.Parts.Zip(Parts, (a, b) => a - b)]));
            Differ = Noise.Test(apart, between);
            ofParts = Differ.Found
                ? new Noise(Math.Sqrt(apart / between), between)
                : new Noise(Math.Sqrt((left + apart) / (freedom + between)), freedom + between);
        }

        public double[] Parts { get; }

        public Noise Noise { get; }

        public TrialTest? Differ { get; }

        // A sum of the parts with its uncertainty.
        public TrialAmount Amount(double[] shares) =>
            ofParts.Amount(shares.Zip(Parts, (a, b) => a * b).Sum(), Math.Sqrt(Square(covariance, shares)));

        public TrialTest Test() => ofParts.Test(Square(weight, Parts), Parts.Length);
    }
}
