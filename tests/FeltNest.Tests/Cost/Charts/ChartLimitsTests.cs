using FeltNest.Cost.Charts;
using FeltNest.Numerics;
using Xunit;

namespace FeltNest.Tests.Cost.Charts;

/// <summary>Limits against published figures, and pure noise against what the chart says of it.</summary>
public sealed class ChartLimitsTests
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2: 30 wafers of 50 chips, mean 0.2313, limits 0.4102 and 0.0524.
    [Fact]
    public void Shares_of_wafers_have_the_published_limits()
    {
        ControlChart chart = ChartLimits.Shares("chips", [.. Enumerable.Range(0, 30).Select(i => ($"{i}", i == 0 ? 28.0 : 11, 50.0))])!;

        // 347 of 1,500 chips, whatever their order: mean and limits hang on the sum alone.
        Assert.Equal(0.2313, chart.Centre, 4e-5);
        Assert.Equal((0.4102, 0.0524), (Math.Round(chart.Points[0].High, 4), Math.Round(chart.Points[0].Low, 4)));
        Assert.Equal("0", Assert.Single(chart.Points, p => p.IsCause).Name);
    }

    // "Introduction to Business Statistics", example 16.6: ten samples of 200, p = 0.16, limits 0.2378 and 0.0822. Sigma z of D. B. Laney
    // (Quality Engineering 14, 2002, 531-537) worked out apart for these: 1.330, limits 0.2634 and 0.0566.
    [Fact]
    public void Ten_samples_of_two_hundred_have_the_published_limits_and_their_sigma_z()
    {
        double[] counts = [40, 44, 22, 34, 24, 32, 28, 32, 34, 30];
        ControlChart chart = ChartLimits.Shares("samples", [.. counts.Select((c, i) => ($"{i}", c, 200.0))])!;

        Assert.Equal(0.16, chart.Centre, 1e-12);
        Assert.Equal((0.2378, 0.0822), (Math.Round(chart.Points[0].High, 4), Math.Round(chart.Points[0].Low, 4)));
        Assert.Equal(1.330, chart.SigmaZ!.Value, 5e-4);
        double room = (chart.Points[0].High - 0.16) * chart.SigmaZ.Value;
        Assert.Equal((0.2634, 0.0566), (Math.Round(0.16 + room, 4), Math.Round(0.16 - room, 4)));

        // 1.33 of ten samples may be noise: the limits stay those of counting.
        Assert.False(chart.IsWidened);
    }

    // Two kinds of day by turns, 10 % and 20 % of 1,000: far more than counting, so limits are widened by sigma z.
    [Fact]
    public void Days_that_differ_by_more_than_counting_widen_the_limits()
    {
        ControlChart chart = ChartLimits.Shares(
            "days", [.. Enumerable.Range(0, 20).Select(i => ($"{i}", i % 2 == 0 ? 100.0 : 200, 1000.0))])!;

        double sigma = Math.Sqrt(0.15 * 0.85 / 1000);
        Assert.True(chart.IsWidened);
        Assert.Equal(0.1 / sigma / 1.128, chart.SigmaZ!.Value, 1e-9);
        Assert.Equal(0.15 + (3 * sigma * chart.SigmaZ.Value), chart.Points[0].High, 1e-12);
        Assert.DoesNotContain(chart.Points, p => p.IsCause);
    }

    // 1 % and 4 % of 6,000 are far apart: of two points no sigma z is taken, which would call both noise.
    [Fact]
    public void Two_rolls_that_really_differ_are_not_made_noise()
    {
        ControlChart chart = ChartLimits.Shares("rolls", [("a", 60, 6000), ("b", 240, 6000)])!;

        Assert.False(chart.IsWidened);
        Assert.All(chart.Points, point => Assert.True(point.IsCause));
    }

    // Own arithmetic, u +- 3 sqrt(u / n) as in NIST/SEMATECH e-Handbook 6.3.3.1: u = 2.5, n = 10: 4.0 and 1.0.
    [Fact]
    public void A_rate_for_a_length_has_its_limits()
    {
        ControlChart chart = ChartLimits.Rates("faults", "1/m", [("a", 20, 10), ("b", 30, 10)])!;

        Assert.Equal((2.5, 4.0, 1.0), (chart.Centre, Math.Round(chart.Points[0].High, 9), Math.Round(chart.Points[0].Low, 9)));
    }

    // NIST/SEMATECH e-Handbook 6.3.2.2: mean 50.81, mean moving range 1.8778, limits 55.8041 and 45.8159; of the range 6.135.
    [Fact]
    public void Individuals_and_their_ranges_have_the_published_limits()
    {
        double[] values = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
        IReadOnlyList<ControlChart> charts = ChartLimits.Individuals("flow", "l", [.. values.Select((v, i) => ($"{i}", v))]);

        Assert.Equal(50.81, charts[0].Centre, 1e-9);
        Assert.Equal((55.8041, 45.8159), (Math.Round(charts[0].Points[0].High, 4), Math.Round(charts[0].Points[0].Low, 4)));
        Assert.Equal(1.8778, charts[1].Centre, 5e-5);
        Assert.Equal(6.135, charts[1].Points[0].High, 5e-4);
    }

    // Average run lengths of a Shewhart chart with known figures, as statistics manuals print them (370.4: after Montgomery).
    [Theory, InlineData(0, 370.4), InlineData(0.5, 155.2), InlineData(1, 43.9), InlineData(1.5, 14.97), InlineData(2, 6.30)]
    [InlineData(3, 2.00)]
    public void A_change_is_seen_after_the_published_run_length(double sigmas, double published) =>
        Assert.Equal(published, ChartLimits.RunLength(sigmas), published > 20 ? 0.06 : 0.006);

    // p = 0.02 of 200: 10 bad ones signal, in 0.75 % of samples and not 0.135 %; at 0.05 a sample is caught in 1.8 tries. Summed by hand
    // from the binomial terms.
    [Fact]
    public void Small_counts_tell_their_true_rate_of_false_signals()
    {
        double high = 0.02 + (3 * Math.Sqrt(0.02 * 0.98 / 200));

        Assert.Equal(0.0075, CountDistribution.BinomialOutside(0.02, 200, 0, high), 5e-5);
        Assert.Equal(1.8, 1 / CountDistribution.BinomialOutside(0.05, 200, 0, high), 0.05);
    }

    // Counted seeds. Signals of n points with a share s by theory have the spread sqrt(n s (1 - s)); the mean is taken from each month, so
    // points keep inside a little more often: a month of 100 days loses 1 part in 100 of its variance.
    [Fact]
    public void Months_of_pure_noise_signal_as_often_as_the_chart_says()
    {
        int signals = 0;
        double expected = 0;
        for (int seed = 1; seed <= 60; seed++)
        {
            Random random = new(seed);
            ControlChart chart = ChartLimits.Shares(
                "noise", [.. Enumerable.Range(0, 100).Select(i => ($"{i}", (double)Struck(random, 200, 0.03), 200.0))])!;
            expected += chart.ExpectedByNoise;
            signals += chart.IsWidened ? 0 : chart.Points.Count(p => p.IsCause);
        }

        Assert.InRange(signals, expected - (4 * Math.Sqrt(expected)), expected + (4 * Math.Sqrt(expected)));
        Assert.True(expected > 20, $"{expected}");
    }

    // Tickets of 2,000 panels, 95 % of which come to a ball: felt varies by 0.5 % a ticket. A lasting 2 % more is seen after 1 or 2.
    [Fact]
    public void A_lasting_change_of_two_per_cent_is_found_within_the_tickets_that_are_said()
    {
        double total = 0;
        double said = 0;
        const int months = 200;
        for (int seed = 1; seed <= months; seed++)
        {
            Random random = new(seed);
            double Felt(double more) => 64 * more * 2000 / (2000 - Struck(random, 2000, 0.12));
            ControlChart before = ChartLimits.Individuals(
                "felt", "m2", [.. Enumerable.Range(0, 200).Select(i => ($"{i}", Felt(1)))])[0];
            double sigma = (before.Points[0].High - before.Centre) / 3;
            said += ChartLimits.RunLength(0.02 * before.Centre / sigma) / months;
            int tickets = 1;
            while (Felt(1.02) <= before.Points[0].High)
            {
                tickets++;
            }

            total += tickets;
        }

        // Run lengths are geometric: their spread is sqrt(L (L - 1)).
        double mean = total / months;
        Assert.InRange(mean, said - (4 * Math.Sqrt(said * (said - 1) / months)), said + (4 * Math.Sqrt(said * (said - 1) / months)));
        Assert.InRange(said, 1.05, 20);
    }

    private static int Struck(Random random, int panels, double share) =>
        Enumerable.Range(0, panels).Count(_ => random.NextDouble() < share);
}
