using FeltNest.Ball;
using FeltNest.Ball.Tolerance;
using FeltNest.Panel.Budget;
using MathNet.Numerics.Distributions;
using Xunit;

namespace FeltNest.Tests.Panel.Budget;

/// <summary>The account of a seam gap, on effects made up whose sums have closed forms.</summary>
public sealed class GapAccountTests
{
    private const double Gap = 0.4;

    [Fact]
    public void The_worst_case_of_straight_effects_is_the_sum_of_their_sizes()
    {
        GapState state = Of(ToleranceReading.Uniform, null, Straight(0.1), Straight(-0.2), Straight(0.05));

        Assert.Equal(Gap - 0.35, state.WorstLeastMm, 12);
        Assert.Equal(Gap + 0.35, state.WorstMostMm, 12);
    }

    [Fact]
    public void The_root_sum_square_of_3_4_and_12_is_13()
    {
        GapState state = Of(ToleranceReading.Uniform, null, Straight(0.03), Straight(-0.04), Straight(0.12));

        Assert.Equal(Gap - 0.13, state.RootLeastMm, 12);
        Assert.Equal(Gap + 0.13, state.RootMostMm, 12);
    }

    [Fact]
    public void An_effect_that_bends_has_its_worst_case_at_its_ends_and_not_on_its_slope()
    {
        // -0.1 at the lower end and +0.3 at the upper: the slope alone would say plus-minus 0.2.
        GapState state = Of(ToleranceReading.Uniform, null, Bent(-0.1, 0.3));

        Assert.Equal(Gap + 0.3, state.WorstMostMm, 12);
        Assert.Equal(Gap - 0.1, state.WorstLeastMm, 12);
        Assert.Equal(0.1, state.Shares[0].BendMm, 12);
    }

    [Fact]
    public void An_effect_that_opens_the_gap_at_both_ends_is_least_between_them()
    {
        // 0.2 x + 0.3 x^2 is least at x = -1/3: -1/30.
        GapState state = Of(ToleranceReading.Uniform, null, Bent(0.1, 0.5));

        Assert.Equal(Gap - (1.0 / 30), state.WorstLeastMm, 12);
    }

    [Fact]
    public void Balls_within_a_range_are_the_normal_share()
    {
        // Two standard deviations are 0.2: the range from 0.3 to 0.55 lies from -1 to +1.5 of them.
        GapState state = Of(ToleranceReading.TwoSigma, Range(0.3, 0.55), Straight(0.2));

        double expected = 100 * (Normal.CDF(0, 1, 1.5) - Normal.CDF(0, 1, -1));
        Assert.Equal(expected, state.BallsWithinPercent!.Value, 0.01);
        Assert.Equal(expected, state.SeamWithinPercent!.Value, 0.01);
    }

    [Fact]
    public void Balls_counted_spread_as_the_normal_sum_does()
    {
        // Straight effects of normal parts: normal, with the root of the sum of squares as two standard deviations.
        GapState state = Of(ToleranceReading.TwoSigma, Range(0.335, 0.465), Straight(0.03), Straight(-0.04), Straight(0.12));

        Assert.Equal(Gap, state.Least.MeanMm, 1e-4);
        Assert.Equal(0.065, state.Least.DeviationMm, 0.001);
        Assert.Equal(Gap + (0.065 * Normal.InvCDF(0, 1, 0.05)), state.Least.Low5Mm, 0.002);
        Assert.Equal(100 * (Normal.CDF(0, 1, 1) - Normal.CDF(0, 1, -1)), state.BallsWithinPercent!.Value, 0.7);
    }

    [Fact]
    public void Balls_of_one_uniform_part_lie_within_by_the_length_of_the_range()
    {
        GapState state = Of(ToleranceReading.Uniform, Range(0.3, 0.45), Straight(0.2));

        Assert.Equal(100 * 0.15 / 0.4, state.BallsWithinPercent!.Value, 0.01);
        Assert.Equal(0.2 / Math.Sqrt(3), state.Least.DeviationMm, 1e-6);
    }

    [Fact]
    public void Shares_of_variance_are_those_of_the_squares()
    {
        GapState state = Of(ToleranceReading.Uniform, null, Straight(0.03), Straight(0.04));

        Assert.Equal(64, state.Shares[0].VariancePercent, 9);
        Assert.Equal(1, state.Shares[0].Source);
        Assert.Equal(36, state.Shares[1].VariancePercent, 9);
        Assert.Null(state.Shares[0].GainPercent);
    }

    [Theory]
    [InlineData(ToleranceReading.Uniform)]
    [InlineData(ToleranceReading.TwoSigma)]
    public void The_variance_of_an_effect_that_bends_is_that_of_the_balls_drawn(ToleranceReading reading)
    {
        // One of two bends alone, so that its share tells the variance of a square: b^2 V2 / (b^2 V2 + a^2 V1).
        GapState state = Of(reading, null, Bent(0.2, 0.2), Straight(0.1));
        GapState alone = Of(reading, null, Bent(0.2, 0.2));
        GapState other = Of(reading, null, Straight(0.1));

        double bent = alone.Least.DeviationMm * alone.Least.DeviationMm;
        double straight = other.Least.DeviationMm * other.Least.DeviationMm;
        Assert.Equal(100 * bent / (bent + straight), state.Shares.Single(share => share.Source == 0).VariancePercent, 0.05);
    }

    [Fact]
    public void Halving_the_wider_of_two_parts_wins_more_and_comes_first()
    {
        GapState state = Of(ToleranceReading.TwoSigma, Range(0.3, 0.5), Straight(0.05), Straight(0.2));

        // With halved parts the sum is normal with a smaller root sum square.
        double Within(double a, double b) => 100 * ((2 * Normal.CDF(0, 1, 0.1 / (Math.Sqrt((a * a) + (b * b)) / 2))) - 1);
        Assert.Equal(1, state.Shares[0].Source);
        Assert.Equal(1, state.Shares[0].Rank);
        Assert.Equal(Within(0.05, 0.1) - Within(0.05, 0.2), state.Shares[0].GainPercent!.Value, 0.7);
        Assert.Equal(Within(0.025, 0.2) - Within(0.05, 0.2), state.Shares[1].GainPercent!.Value, 0.7);
        Assert.InRange(state.Shares[0].GainErrorPercent!.Value, 0.05, 0.3);
    }

    [Fact]
    public void With_nothing_off_nothing_is_spread()
    {
        GapState state = Of(ToleranceReading.Uniform, Range(0.2, 0.6), Straight(0));

        Assert.Equal(Gap, state.WorstLeastMm);
        Assert.Equal(Gap, state.RootMostMm);
        Assert.Equal(0, state.Least.DeviationMm, 1e-9);
        Assert.Equal(100, state.BallsWithinPercent);
        Assert.Equal(0, state.Shares[0].VariancePercent);
        Assert.Equal(0, state.Shares[0].GainPercent);
    }

    [Fact]
    public void A_gap_outside_its_range_with_nothing_off_is_told_to_be_mended_first()
    {
        GapState state = Of(ToleranceReading.Uniform, Range(0.5, 0.9), Straight(0.01));
        GapBudget budget = Budget(state, Range(0.5, 0.9));

        Assert.Equal(0, state.BallsWithinPercent);
        Assert.Contains("mend panel or seam gap first", GapWords.Of(budget, state)[0], StringComparison.Ordinal);
        Assert.Equal("outside", GapWords.Verdict(budget.Adhesive, state.NominalLeastMm, state.NominalMostMm));
    }

    [Fact]
    public void Two_parts_alike_are_told_not_to_be_told_apart()
    {
        AdhesiveRange range = Range(0.3, 0.5);
        GapState state = Of(ToleranceReading.Uniform, range, Straight(0.1), Straight(0.1), Straight(0.001));

        string first = GapWords.Of(Budget(state, range), state)[3];
        Assert.Contains("does not tell it from", first, StringComparison.Ordinal);
        Assert.DoesNotContain("part 2", first, StringComparison.Ordinal);
    }

    private static AdhesiveRange Range(double least, double most) => new() { LeastMm = least, MostMm = most };

    private static GapBudget Budget(GapState state, AdhesiveRange range) => new()
    {
        ReadAs = ToleranceReading.Uniform,
        Balls = GapSamples.Balls,
        Adhesive = range,
        Sources = [.. state.Effects.Select(effect => new GapSource
        {
            Field = $"field{effect.Source}",
            Words = $"part {effect.Source}",
            Unit = "mm",
            PlusMinus = 1,
        })],
        NotStated = [],
        AtFitting = state,
        AfterCure = state,
    };

    private static GapState Of(ToleranceReading reading, AdhesiveRange? range, params (double Minus, double Plus)[] ends)
    {
        GapEffect[] all = [.. ends.Select((end, i) => new GapEffect
        {
            Source = i,
            Panels = GapEffects.BothPanels,
            AtMinus = [end.Minus],
            AtPlus = [end.Plus],
        })];
        GapEffects effects = new([(0, 0, 300)], [Gap], all);
        return new GapAccount(effects, range, reading, new GapSamples(reading, all.Length)).State(_ => null);
    }

    private static (double Minus, double Plus) Straight(double slope) => (-slope, slope);

    private static (double Minus, double Plus) Bent(double minus, double plus) => (minus, plus);
}
