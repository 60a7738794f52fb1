using FeltNest.Die.Proof;
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
