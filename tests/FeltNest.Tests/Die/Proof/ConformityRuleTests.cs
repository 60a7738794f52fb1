using FeltNest.Die.Proof;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Die.Proof;

/// <summary>What a measured value proves.</summary>
public sealed class ConformityRuleTests
{
    // ISO 14253-1:2017 as a public calibration procedure quotes it (its page 16): guard 1.65 u. A zone of 0.50 with u = 0.05 of the zone,
    // so 0.25 with u = 0.025 of a distance: accepted to 0.4175 of zone. One value is rejected from 0.5825 on.
    [Fact]
    public void A_guard_of_1_65_standard_uncertainties_is_kept()
    {
        const double expanded = 2 * 0.025;

        Assert.Equal(0.4175, 2 * (0.25 - ConformityRule.AcceptGuard(expanded)), 1e-12);
        Assert.Equal(0.5825, 2 * (0.25 + ConformityRule.RejectGuard(expanded, 1)), 1e-12);
    }

    // Upper points of the normal distribution: 0.05 / 100 lies beyond 3.2905 (Abramowitz and Stegun, table 26.5, for a tail of 0.0005).
    [Fact]
    public void The_worst_of_a_hundred_points_has_to_be_further_out_to_be_rejected() =>
        Assert.Equal(3.2905, ConformityRule.RejectGuard(2, 100), 1e-4);

    [Fact]
    public void An_unknown_uncertainty_leaves_no_guard() =>
        Assert.Equal((0, 0), (ConformityRule.AcceptGuard(null), ConformityRule.RejectGuard(null, 50)));

    // JCGM 106:2012, clause 7.4: a value of 13.6 with u = 1.8 between 12.5 and 16.3, and clause 7.3 as from memory, one-sided.
    [Theory]
    [InlineData(13.6, 1.8, 12.5, 16.3, 0.6626)]
    [InlineData(-5.47, 0.05, double.NegativeInfinity, -5.40, 0.919)]
    public void Chances_are_those_of_the_guide(double value, double standard, double lower, double upper, double chance) =>
        Assert.Equal(chance, ConformityRule.Chance(value, standard, lower, upper), 5e-4);

    [Theory]
    [InlineData(0.50, 0.50, "Conforms")]
    [InlineData(0.50, 0.57, "Undecided")]
    [InlineData(0.57, 0.57, "Undecided")]
    [InlineData(0.69, 9.00, "Undecided")]
    [InlineData(0.71, 9.00, "DoesNotConform")]
    public void What_is_neither_well_inside_nor_well_outside_is_undecided(double worst, double hidden, string verdict) =>
        Assert.Equal(verdict, ConformityRule.Of(worst, hidden, 0.6, 0.05, 0.1).ToString());

    // Noise of 0.04 on a panel cut 0.52 or 0.59 too large all round, where 0.6 is allowed: sound panels. Each is measured 200 times.
    [Theory]
    [InlineData(0.52)]
    [InlineData(0.59)]
    public void Noise_does_not_reject_a_sound_panel(double size)
    {
        int refused = Enumerable.Range(0, 200).Count(seed => Verdict(size, seed, 0.08) == Conformity.DoesNotConform);

        // Five per cent of 200 are 10; three standard deviations of such a count are 9 more.
        Assert.InRange(refused, 0, 19);
    }

    [Fact]
    public void A_panel_far_outside_is_rejected_through_the_noise_and_one_far_inside_accepted()
    {
        Assert.All(Enumerable.Range(0, 50), seed => Assert.Equal(Conformity.DoesNotConform, Verdict(0.8, seed, 0.08)));
        Assert.All(Enumerable.Range(0, 50), seed => Assert.Equal(Conformity.Conforms, Verdict(0.2, seed, 0.08)));
    }

    private static Conformity Verdict(double size, int seed, double expanded)
    {
        Random chance = new(seed);
        Point2 Place(int k)
        {
            double noise = 0.04 * Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(Math.Tau * chance.NextDouble());
            return new Point2(30 + size + noise, 0).Turned(k * Math.Tau / 60);
        }

        Outline disc = Outline.From(Enumerable.Range(0, 360).Select(k => new Point2(30, 0).Turned(k * Math.Tau / 360)));
        return PanelFitter.Fit(
            disc, [.. Enumerable.Range(0, 60).Select(Place)], new ProfileRule { ToleranceMm = 1.2, UncertaintyMm = expanded }).Verdict;
    }
}
