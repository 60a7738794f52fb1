using System.Text;
using FeltNest.Die.Proof;
using FeltNest.Files;
using FeltNest.Files.Dies;
using Xunit;

namespace FeltNest.Tests.Die.Proof;

public sealed class DieLifeTests
{
    [Fact]
    public void A_straight_drift_is_carried_on_to_the_tolerance()
    {
        // 0.1 mm at the start and 0.01 mm a thousand strikes: 0.6 mm after 50,000.
        DieLife life =
            Of(60_000, Reading(0, 1, 0.1), Reading(10_000, 1, 0.2), Reading(20_000, 1, 0.3), Reading(0, 2, 0.1), Reading(20_000, 2, 0.1));

        Assert.Equal(50_000, life.DriftLimit!.Value, 1e-6);
        Assert.Equal(50_000, life.ReRuleAt!.Value, 1e-6);
        Assert.Equal(0.01, life.Drifts[0].PerThousandMm, 1e-12);
        Assert.Null(life.Drifts[1].LimitStrikes);
        Assert.False(life.Failed);
    }

    [Fact]
    public void The_stated_life_holds_where_it_ends_first_or_no_drift_is_seen()
    {
        Assert.Equal(30_000, Of(30_000, Reading(0, 1, 0.1), Reading(10_000, 1, 0.2)).ReRuleAt);
        Assert.Equal(30_000, Of(30_000, Reading(0, 1, 0.1)).ReRuleAt);
        Assert.Null(Of(null, Reading(0, 1, 0.1)).ReRuleAt);
    }

    [Fact]
    public void A_last_reading_outside_the_tolerance_is_a_failure_and_an_earlier_one_is_not()
    {
        Assert.True(Of(null, Reading(0, 1, 0.1), Reading(5000, 1, 0.7)).Failed);
        Assert.False(Of(null, Reading(0, 1, 0.7), Reading(5000, 1, 0.2)).Failed);
    }

    // Four readings alike and one far above them: a straight line would promise 110,256 strikes.
    [Fact]
    public void A_reading_that_lies_off_the_others_is_told()
    {
        DieDrift drift = Of(
            null, Reading(0, 1, 0.21), Reading(10_000, 1, 0.20), Reading(20_000, 1, 0.22), Reading(30_000, 1, 0.21),
            Reading(40_000, 1, 0.40)).Drifts[0];

        Assert.Equal(DriftFit.OneOff, drift.Fit);
    }

    [Fact]
    public void Wear_that_grows_faster_and_faster_is_told()
    {
        DieReading[] readings =
            [.. Enumerable.Range(0, 8).Select(k => Reading(5000 * k, 1, 0.1 + (0.006 * k * k) + (k % 2 == 0 ? 0.002 : -0.002)))];

        Assert.Equal(DriftFit.Bends, Of(null, readings).Drifts[0].Fit);
        Assert.Equal(DriftFit.TooFew, Of(null, readings[..3]).Drifts[0].Fit);
    }

    // The truth is known: 0.6 mm is reached after 50,000 strikes. An interval of 95 per cent holds it in 95 of 100 dies, and two tests at
    // 5 per cent speak against a straight line in no more than 10; three standard deviations of such counts are allowed.
    [Fact]
    public void Intervals_hold_the_truth_and_straight_wear_is_seldom_doubted()
    {
        const int dies = 400;
        int held = 0;
        int doubted = 0;
        for (int seed = 0; seed < dies; seed++)
        {
            Random chance = new(seed);
            double Noise() => 0.02 * Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(Math.Tau * chance.NextDouble());
            DieDrift drift =
                Of(null, [.. Enumerable.Range(0, 8).Select(k => Reading(5000 * k, 1, 0.1 + (0.05 * k) + Noise()))]).Drifts[0];
            held += drift.LimitFrom <= 50_000 && (drift.LimitTo ?? double.PositiveInfinity) >= 50_000 ? 1 : 0;
            doubted += drift.Fit == DriftFit.Line ? 0 : 1;
        }

        Assert.InRange(held, 380 - 13, 380 + 13);
        Assert.InRange(doubted, 0, 40 + 18);
    }

    // A line that may as well be level has an early end and no late one.
    [Fact]
    public void A_drift_that_noise_can_make_has_no_late_end()
    {
        DieDrift drift = Of(
            null, Reading(0, 1, 0.20), Reading(10_000, 1, 0.26), Reading(20_000, 1, 0.21), Reading(30_000, 1, 0.27)).Drifts[0];

        Assert.NotNull(drift.LimitFrom);
        Assert.Null(drift.LimitTo);
        Assert.Null(Of(null, Reading(0, 1, 0.1), Reading(10_000, 1, 0.2)).Drifts[0].LimitFrom);
    }

    [Fact]
    public void Strikes_that_fall_with_later_days_are_refused()
    {
        const string list = "date,strikes,cavity,ply,offMm,worstMm\n2026-02-01,9000,1,top,0,0.2\n2026-01-01,0,1,top,0,0.1\n";

        Assert.Equal(2, Read(list).Count);
        Assert.Contains(
            "line 4, strikes: 8000 on 2026-03-01 is below the 9000 of 2026-02-01",
            Assert.Throws<InputException>(() => Read(list + "2026-03-01,8000,1,top,0,0.3\n")).Message, StringComparison.Ordinal);
    }

    private static IReadOnlyList<DieReading> Read(string list) =>
        ReadingsReader.Read(InputText.Of("r.csv", Encoding.UTF8.GetBytes(list)), 4);

    private static DieReading Reading(int strikes, int cavity, double worst) => new()
    {
        Date = "2026-01-31",
        Strikes = strikes,
        Cavity = cavity,
        Ply = "single",
        OffMm = 0,
        WorstMm = worst,
    };

    private static DieLife Of(int? stated, params DieReading[] readings) => DieLife.Of("D", "A", 1.2, readings, stated, null);
}
