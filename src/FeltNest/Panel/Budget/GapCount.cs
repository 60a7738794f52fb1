using FeltNest.Ball;

namespace FeltNest.Panel.Budget;

/// <summary>Counts balls: the gap round each, by what its parts are off.</summary>
internal sealed class GapCount
{
    private readonly GapEffects effects;
    private readonly GapSamples samples;
    private readonly AdhesiveRange? adhesive;
    private readonly int stations;

    // Gap of each ball at each station, ball by ball.
    private readonly double[] gaps;
    private readonly double[] within;

    /// <summary>Counts.</summary>
    /// <param name="effects">The effects.</param>
    /// <param name="samples">The balls, a column for each effect.</param>
    /// <param name="adhesive">Gaps that the adhesive bridges; null for none stated.</param>
    public GapCount(GapEffects effects, GapSamples samples, AdhesiveRange? adhesive)
    {
        this.effects = effects;
        this.samples = samples;
        this.adhesive = adhesive;
        stations = effects.Nominal.Count;
        gaps = new double[GapSamples.Balls * stations];
        for (int ball = 0; ball < GapSamples.Balls; ball++)
        {
            for (int i = 0; i < stations; i++)
            {
                gaps[(ball * stations) + i] = effects.Nominal[i];
            }
        }

        for (int k = 0; k < effects.All.Count; k++)
        {
            Add(gaps, k, share => share);
        }

        within = Within();
        Least = Spread(row => row.ToArray().Min());
        Most = Spread(row => row.ToArray().Max());
    }

    /// <summary>How the least gap of a ball is spread.</summary>
    public GapSpread Least { get; }

    /// <summary>How the greatest gap of a ball is spread.</summary>
    public GapSpread Most { get; }

    /// <summary>Balls whose whole seam lies within the range, %; null without one.</summary>
    public double? BallsWithinPercent => adhesive is null
        ? null
        : 100.0 * Enumerable.Range(0, GapSamples.Balls).Count(ball => IsWithin(gaps, ball)) / GapSamples.Balls;

    /// <summary>Length of seam within the range over all balls, %; null without one.</summary>
    public double? SeamWithinPercent => adhesive is null
        ? null
        : effects.Places.Select((place, i) => place.LengthMm * within[i]).Sum() / effects.Places.Sum(place => place.LengthMm);

    /// <summary>Balls within the range at a station, %; null without one.</summary>
    public double? WithinPercent(int station) => adhesive is null ? null : within[station];

    /// <summary>What is won when some effects are halved, points of per cent, with its standard error; null without a range.</summary>
    public (double Percent, double Error)? Gain(IReadOnlyList<int> halved)
    {
        if (adhesive is null)
        {
            return null;
        }

        double[] better = [.. gaps];
        foreach (int k in halved)
        {
            Add(better, k, share => share, -1);
            Add(better, k, share => share / 2);
        }

        // The same balls are counted twice, so that only those that change sides count.
        int won = 0;
        int lost = 0;
        for (int ball = 0; ball < GapSamples.Balls; ball++)
        {
            (bool before, bool after) = (IsWithin(gaps, ball), IsWithin(better, ball));
            won += after && !before ? 1 : 0;
            lost += before && !after ? 1 : 0;
        }

        double gain = (double)(won - lost) / GapSamples.Balls;
        double variance = ((double)(won + lost) / GapSamples.Balls) - (gain * gain);
        return (100 * gain, 100 * Math.Sqrt(variance / GapSamples.Balls));
    }

    private void Add(double[] to, int k, Func<double, double> share, double side = 1)
    {
        GapEffect effect = effects.All[k];
        double[] slopes = [.. Enumerable.Range(0, stations).Select(effect.Slope)];
        double[] bends = [.. Enumerable.Range(0, stations).Select(effect.Bend)];
        ReadOnlySpan<double> off = samples.Of(k);
        for (int ball = 0; ball < off.Length; ball++)
        {
            double x = share(off[ball]);
            Span<double> row = to.AsSpan(ball * stations, stations);
            for (int i = 0; i < stations; i++)
            {
                row[i] += side * (((bends[i] * x) + slopes[i]) * x);
            }
        }
    }

    private bool IsWithin(double[] of, int ball)
    {
        foreach (double gap in of.AsSpan(ball * stations, stations))
        {
            if (!adhesive!.Holds(gap))
            {
                return false;
            }
        }

        return true;
    }

    private double[] Within()
    {
        double[] counts = new double[stations];
        for (int at = 0; at < gaps.Length; at++)
        {
            counts[at % stations] += adhesive?.Holds(gaps[at]) == true ? 1 : 0;
        }

        return [.. counts.Select(count => 100 * count / GapSamples.Balls)];
    }

    private delegate double Figure(ReadOnlySpan<double> row);

    private GapSpread Spread(Figure figure)
    {
        double[] values = [.. Enumerable.Range(0, GapSamples.Balls).Select(ball => figure(gaps.AsSpan(ball * stations, stations)))];
        Array.Sort(values);
        double mean = values.Average();

        // The value that a share of the balls lies below: half-way between two balls.
        double At(double share) => (values[(int)(share * values.Length) - 1] + values[(int)(share * values.Length)]) / 2;
        return new GapSpread
        {
            MeanMm = mean,
            DeviationMm = Math.Sqrt(values.Average(value => (value - mean) * (value - mean))),
            Low1Mm = At(0.01),
            Low5Mm = At(0.05),
            MiddleMm = At(0.5),
            High5Mm = At(0.95),
            High1Mm = At(0.99),
        };
    }
}
