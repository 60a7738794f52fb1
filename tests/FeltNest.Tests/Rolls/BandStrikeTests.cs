using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Rolls;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Plan;
using Xunit;

namespace FeltNest.Tests.Rolls;

/// <summary>Strikes of layouts with bands and with a second part.</summary>
public sealed class BandStrikeTests
{
    // Three squares every 12 mm and two plates every 18 are 36: a strike of both bands. Squares end at 24 + 10 and plates at 18 + 16, both
    // 34 mm from where they begin. On 118 mm stand three strikes: they begin at 0, 36 and 72 and the last ends at 106.
    [Fact]
    public void Bands_with_a_common_length_are_struck_together_and_each_part_is_counted()
    {
        RollLayout layout = RollCases.TwoParts(18);
        FeltRoll roll = RollCases.Roll(118, 32, RollFault.Disc(37, 22, 0.5));
        RollPlan plan = Plan(layout, roll);

        Assert.Equal((36, 5, 34), (plan.Pattern.FeedMm, plan.Pattern.Panels.Count, Math.Round(plan.Pattern.LengthMm, 9)));
        Assert.Equal(3, plan.Strikes.Count);
        Assert.Equal([9 - Lost(plan, 0), 6 - Lost(plan, 1)], plan.Yields.Select(y => y.GoodPanels));
        Assert.Equal([plan.Yields[0].GoodPanels / 2, plan.Yields[1].GoodPanels / 2], plan.Yields.Select(y => y.Balls));
        Assert.Equal(new EveryChain(plan).Best(), plan.GoodPanels);
        Assert.Empty(RollPlanCheck.Verify(layout, roll, RollCases.Stated(plan)).Violations);
    }

    [Theory]
    [InlineData(1, 0, "parts: 7 balls of panel 0 stated")]
    [InlineData(0, 2, "good panels of panel 1 stated")]
    public void The_check_finds_wrong_counts_of_a_part(int part, int more, string told)
    {
        RollLayout layout = RollCases.TwoParts(18);
        FeltRoll roll = RollCases.Roll(118, 32);
        StatedPlan stated = RollCases.Stated(Plan(layout, roll));
        StatedPart[] parts = [.. stated.Parts];
        parts[1 - part] = more == 0
            ? parts[1 - part] with { Balls = 7 }
            : parts[1 - part] with { GoodPanels = parts[1 - part].GoodPanels + more };

        Assert.Contains(
            RollPlanCheck.Verify(layout, roll, stated with { Parts = parts }).Violations, v => v.Contains(told, StringComparison.Ordinal));
    }

    [Fact]
    public void Bands_without_a_common_length_are_refused_and_told_what_would_work()
    {
        InputException error =
            Assert.Throws<InputException>(() => Plan(RollCases.TwoParts(18.0137), RollCases.Roll(500, 32)));

        Assert.Contains("2 bands have repeats of 12 and 18.0137 mm", error.Problem, StringComparison.Ordinal);
        Assert.Contains("Plan each band by itself with a die of its own", error.Problem, StringComparison.Ordinal);
    }

    // Plates of 16 every 18.0137 mm: six end at 106.07, a seventh would end at 124.08.
    [Fact]
    public void A_band_by_itself_is_planned_and_checked()
    {
        RollLayout band = BandLayout.Of(RollCases.TwoParts(18.0137), 2);
        FeltRoll roll = RollCases.Roll(118, 32);
        RollPlan plan = Plan(band, roll);

        Assert.Empty(LayoutCheck.Verify(band).Violations);
        Assert.Equal("plate", Assert.Single(band.Parts).Name);
        Assert.Equal((6, 3), (plan.GoodPanels, plan.Balls));
        Assert.Empty(RollPlanCheck.Verify(band, roll, RollCases.Stated(plan)).Violations);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void A_band_that_is_not_there_is_told(int band) =>
        Assert.Contains(
            "the layout has 2 bands, counted from 1",
            Assert.Throws<InputException>(() => BandLayout.Of(RollCases.TwoParts(18), band)).Problem, StringComparison.Ordinal);

    // Panels lost of a part, all strikes.
    private static int Lost(RollPlan plan, int part) =>
        plan.Strikes.Sum(s => s.Lost.Count(l => plan.Pattern.Panels[l.Panel].Placed.Part == part));

    private static RollPlan Plan(RollLayout layout, FeltRoll roll) =>
        StrikePlanner.Run(new RollRequest { Layout = layout, Roll = roll, RepeatsPerStrike = 1, GuidePlayMm = 0, FromMm = 0 });
}
