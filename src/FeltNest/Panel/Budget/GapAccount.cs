using FeltNest.Ball;
using FeltNest.Ball.Tolerance;

namespace FeltNest.Panel.Budget;

/// <summary>Adds up what parts do to the gap: worst case, root sum square, balls counted, and which tolerance to buy down first.</summary>
/// <param name="effects">The effects.</param>
/// <param name="adhesive">Gaps that the adhesive bridges; null for none stated.</param>
/// <param name="reading">How tolerances are read.</param>
/// <param name="samples">The balls, a column for each effect.</param>
internal sealed class GapAccount(GapEffects effects, AdhesiveRange? adhesive, ToleranceReading reading, GapSamples samples)
{
    private readonly int count = effects.Nominal.Count;

    /// <summary>The budget of the state.</summary>
    /// <param name="solved">Solves the gaps with each effect at a share of its tolerance; null where it cannot be.</param>
    public GapState State(Func<IReadOnlyList<double>, double[]?> solved)
    {
        double[] least = new double[count];
        double[] most = new double[count];
        for (int i = 0; i < count; i++)
        {
            least[i] = Worst(i, true);
            most[i] = Worst(i, false);
        }

        int low = Array.IndexOf(least, least.Min());
        int high = Array.IndexOf(most, most.Max());
        GapCount balls = new(effects, samples, adhesive);
        return new GapState
        {
            Stations = [.. effects.Places.Select((place, i) => new GapStation
            {
                S = place.S,
                AlongMm = place.AlongMm,
                LengthMm = place.LengthMm,
                GapMm = effects.Nominal[i],
                WorstLeastMm = least[i],
                WorstMostMm = most[i],
                RootSumSquareMm = Math.Sqrt(effects.All.Sum(effect => effect.Slope(i) * effect.Slope(i))),
                WithinPercent = balls.WithinPercent(i),
            })],
            Effects = effects.All,
            Shares = Ranked(balls),
            Least = balls.Least,
            Most = balls.Most,
            BallsWithinPercent = balls.BallsWithinPercent,
            SeamWithinPercent = balls.SeamWithinPercent,
            SolvedLeastMm = solved([.. effects.All.Select(effect => effect.Worst(low, true))])?.Min(),
            SolvedMostMm = solved([.. effects.All.Select(effect => effect.Worst(high, false))])?.Max(),
        };
    }

    private double Worst(int station, bool least) =>
        effects.Nominal[station] + effects.All.Sum(effect => effect.At(station, effect.Worst(station, least)));

    private GapShare[] Ranked(GapCount balls)
    {
        double[] variances = [.. effects.All.Select(Variance)];
        double whole = variances.Sum();
        GapShare[] shares = [.. effects.All.Select(effect => effect.Source).Distinct().Select(source =>
        {
            int[] mine = [.. Enumerable.Range(0, effects.All.Count).Where(k => effects.All[k].Source == source)];
            (double Percent, double Error)? gain = balls.Gain(mine);
            double share = whole > 0 ? 100 * mine.Sum(k => variances[k]) / whole : 0;
            return new GapShare
            {
                Source = source,
                GreatestMm = mine.Max(k => Greatest(i => Math.Max(
                    Math.Abs(effects.All[k].AtMinus[i]), Math.Abs(effects.All[k].AtPlus[i])))),
                BendMm = mine.Max(k => Greatest(i => Math.Abs(effects.All[k].Bend(i)))),
                VariancePercent = share,
                GainPercent = gain?.Percent,
                GainErrorPercent = gain?.Error,
                Rank = 0,
            };
        })];
        return
        [
            .. shares.OrderByDescending(share => share.GainPercent ?? 0).ThenByDescending(share => share.VariancePercent)
                .Select((share, i) => share with { Rank = i + 1 }),
        ];
    }

    // Variance of the gap by one effect, mean over the seam's length.
    private double Variance(GapEffect effect)
    {
        (double ofShare, double ofSquare) = GapSamples.Variance(reading);
        double sum = 0;
        for (int i = 0; i < count; i++)
        {
            double a = effect.Slope(i);
            double b = effect.Bend(i);
            sum += effects.Places[i].LengthMm * ((a * a * ofShare) + (b * b * ofSquare));
        }

        return sum / effects.Places.Sum(place => place.LengthMm);
    }

    private double Greatest(Func<int, double> value) => Enumerable.Range(0, count).Max(value);
}
