using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Plan;
using Xunit;

namespace FeltNest.Tests.Rolls;

public sealed class StrikePlannerTests
{
    [Fact]
    public void A_clean_roll_is_struck_in_line_from_its_start()
    {
        // 10 squares 12 apart need 9 * 12 + 10 = 118 mm.
        RollPlan plan = Plan(RollCases.Squares, RollCases.Roll(118, 20));

        Assert.Equal((10, 10), (plan.GoodPanels, plan.BackToBackGoodPanels));
        Assert.Equal(Enumerable.Range(0, 10).Select(k => 12.0 * k), plan.Strikes.Select(s => s.XMm));
        Assert.Single(StrikeRun.Of(plan));
    }

    [Fact]
    public void A_strike_slides_past_a_joint()
    {
        // In line the joint at 20 takes the second square (12 to 22); slid to 21 it is clear, and five more follow before 93.
        RollPlan plan = Plan(RollCases.Squares, RollCases.Roll(93, 20) with { Splices = [new() { XMm = 20 }] });

        Assert.Equal((7, 6), (plan.GoodPanels, plan.BackToBackGoodPanels));
        Assert.DoesNotContain(plan.Strikes, s => s.Lost.Count > 0);
    }

    [Theory]
    [InlineData(0, 7)]
    [InlineData(4, 6)]
    [InlineData(10.5, 5)]
    public void No_strike_touches_the_clear_length_of_a_splice(double clear, int good)
    {
        // The splice stands at 20.5 of 93. Without a clear length squares stand at 0 and from 21 on, six of them to 91. Clear of 16.5 to
        // 24.5 the second begins at 25 at the earliest, and five end at 83. Clear of 10 to 31 even 0 to 10 touches: five from 32 to 90.
        FeltRoll roll = RollCases.Roll(93, 20) with { Splices = [new() { XMm = 20.5, ClearMm = clear }] };
        RollPlan plan = Plan(RollCases.Squares, roll);

        Assert.Equal(good, plan.GoodPanels);
        Assert.DoesNotContain(plan.Strikes, s => s.XMm + 10 >= 20.5 - clear && s.XMm <= 20.5 + clear);
        Assert.Equal(new EveryChain(plan).Best(), plan.GoodPanels);
        Assert.Empty(RollPlanCheck.Verify(RollCases.Squares, roll, RollCases.Stated(plan)).Violations);
    }

    [Fact]
    public void The_check_finds_a_strike_on_the_clear_length_of_a_splice()
    {
        FeltRoll roll = RollCases.Roll(93, 20) with { Splices = [new() { XMm = 20 }] };
        RollPlan plan = Plan(RollCases.Squares, roll);
        FeltRoll clear = roll with { Splices = [new() { XMm = 20, ClearMm = 3 }] };

        Assert.Contains(
            "strike 1: from 9 to 19 mm touches a splice's clear length",
            RollPlanCheck.Verify(RollCases.Squares, clear, RollCases.Stated(plan)).Violations[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Combs_slide_by_a_tooth_where_nothing_between_is_allowed()
    {
        // The fault takes the lower comb of any strike that begins between 1 and 53; the first ends before 45 only from 0. One tooth
        // further than the feed, at 54, the teeth fit again and the second strike ends at 119; clear of all teeth, from 66, it would end at
        // 131.
        FeltRoll roll = RollCases.Roll(119, 19, RollFault.Box(45, 5, 8, 1));
        RollPlan plan = Plan(RollCases.Combs, roll);

        Assert.Equal((4, 3), (plan.GoodPanels, plan.BackToBackGoodPanels));
        Assert.Equal([0, 54], plan.Strikes.Select(s => s.XMm));
        Assert.Empty(RollPlanCheck.Verify(RollCases.Combs, roll, RollCases.Stated(plan)).Violations);
        Assert.Equal(new EveryChain(plan).Best(), plan.GoodPanels);
    }

    [Theory]
    [InlineData(3.001, 1)]
    [InlineData(2.999, 2)]
    public void A_disc_that_reaches_a_square_takes_it_and_one_that_does_not_leaves_it(double radius, int good) =>
        // The roll holds two squares, 0 to 10 and 12 to 22; the disc's centre stands 3 below the first one's lower side.
        Assert.Equal(good, Plan(RollCases.Squares, RollCases.Roll(22, 20, RollFault.Disc(5, 2, radius))).GoodPanels);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(2, 1)]
    public void A_move_across_saves_a_square_from_a_fault_where_the_roll_is_wide(double play, int good)
    {
        // A fault 1 wide along the lower side of the square for the whole length; a roll 22 wide leaves 2 to move.
        RollPlan Run() =>
            StrikePlanner.Run(new RollRequest
            {
                Layout = RollCases.Squares,
                Roll = RollCases.Roll(10, 22, RollFault.Box(0, 5, 10, 1)),
                RepeatsPerStrike = 1,
                GuidePlayMm = play,
                FromMm = 0,
            });
        if (good == 0)
        {
            Assert.Throws<NoAnswerException>(Run);
            return;
        }

        Assert.Equal((good, 2.0), (Run().GoodPanels, Run().Strikes[0].ShiftYMm));
    }

    [Theory]
    [InlineData("squares", 1)]
    [InlineData("squares", 3)]
    [InlineData("combs", 1)]
    [InlineData("combs", 2)]
    public void On_clean_felt_the_account_counts_the_panels_that_strikes_in_line_cut_at_every_length(string name, int repeats)
    {
        // Squares are shorter than their feed, combs reach 61 past a feed of 48.
        RollLayout layout = name == "squares" ? RollCases.Squares : RollCases.Combs;
        int panels = layout.Bands[0].Repeat.Panels.Count;
        for (double length = 330; length < 500; length += 1.7)
        {
            RollPlan plan = StrikePlanner.Run(new RollRequest
            {
                Layout = layout,
                Roll = RollCases.Roll(length, layout.RollWidthMm),
                RepeatsPerStrike = repeats,
                GuidePlayMm = 0,
                FromMm = 0,
            });
            FeltLosses losses = FeltLosses.None with { RollLengthM = length / 1000, MostPanelsPerStrike = repeats * panels };

            Assert.Equal(plan.BackToBackGoodPanels, FeltAccount.Of(LayPlan.Of(layout), losses, null).PanelsCut, 1e-9);
        }
    }

    [Fact]
    public void The_rest_of_a_roll_begins_where_it_is_told_to()
    {
        RollPlan plan = StrikePlanner.Run(new RollRequest
        {
            Layout = RollCases.Squares,
            Roll = RollCases.Roll(118, 20),
            RepeatsPerStrike = 1,
            GuidePlayMm = 0,
            FromMm = 50,
        });

        Assert.Equal((50, 5), (plan.Strikes[0].XMm, plan.GoodPanels));
    }

    [Fact]
    public void The_least_width_over_a_panels_span_decides()
    {
        // 19 wide at 5 and 20 at both ends: the first square of 0 to 10 does not fit anywhere it would cross the narrow place.
        FeltRoll roll = RollCases.Roll(22, 20) with
        {
            Widths =
            [
                new() { XMm = 0, WidthMm = 20 }, new() { XMm = 4, WidthMm = 20 }, new() { XMm = 5, WidthMm = 19 },
                new() { XMm = 6, WidthMm = 20 }, new() { XMm = 22, WidthMm = 20 },
            ],
        };

        RollPlan plan = Plan(RollCases.Squares, roll);

        Assert.Equal(1, plan.GoodPanels);
        Assert.InRange(plan.Strikes[0].XMm, 6, 12);
    }

    [Theory]
    [InlineData(false, 8)]
    [InlineData(true, 9)]
    public void No_strike_reaches_past_the_end_unless_that_is_allowed(bool pastEnd, int good)
    {
        // Strikes of two squares, 22 mm long, one every 24 mm: the fifth would end at 118 and the roll ends at 117. Its first square, 96 to
        // 106, is good where it may hang over; without that four strikes end at 94.
        FeltRoll roll = RollCases.Roll(117, 20);
        RollPlan plan = StrikePlanner.Run(new RollRequest
        {
            Layout = RollCases.Squares,
            Roll = roll,
            RepeatsPerStrike = 2,
            GuidePlayMm = 0,
            FromMm = 0,
            PastEnd = pastEnd,
        });

        Assert.Equal((good, good), (plan.GoodPanels, plan.BackToBackGoodPanels));
        Assert.Equal(pastEnd ? 1 : 0, plan.OverhangMm, 9);
        Assert.Equal(new EveryChain(plan).Best(), plan.GoodPanels);
        Assert.Empty(RollPlanCheck.Verify(RollCases.Squares, roll, RollCases.Stated(plan)).Violations);
    }

    [Fact]
    public void The_check_finds_a_strike_past_the_end()
    {
        FeltRoll roll = RollCases.Roll(117, 20);
        RollPlan plan = StrikePlanner.Run(new RollRequest
        {
            Layout = RollCases.Squares,
            Roll = roll,
            RepeatsPerStrike = 2,
            GuidePlayMm = 0,
            FromMm = 0,
            PastEnd = true,
        });

        string told = RollPlanCheck.Verify(RollCases.Squares, roll, RollCases.Stated(plan) with { PastEnd = false }).Violations[0];
        Assert.StartsWith("strike 5: reaches to 118 mm, past the end of the roll at 117 mm", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rest_shorter_than_a_strike_is_refused_and_told_what_would_work()
    {
        RollRequest request = new()
        {
            Layout = RollCases.Squares,
            Roll = RollCases.Roll(21, 20),
            RepeatsPerStrike = 2,
            GuidePlayMm = 0,
            FromMm = 0,
        };

        NoAnswerException error = Assert.Throws<NoAnswerException>(() => StrikePlanner.Run(request));
        Assert.Contains("21 mm left to cut, and one strike is 22 mm long", error.Message, StringComparison.Ordinal);
        Assert.Equal(1, StrikePlanner.Run(request with { PastEnd = true }).GoodPanels);
    }

    [Fact]
    public void Every_cause_is_counted_once_a_panel()
    {
        // The joint runs through the fault: one panel, one cause, the first of the list.
        FeltRoll roll = RollCases.Roll(22, 20, RollFault.Box(4, 8, 2, 2)) with { Splices = [new() { XMm = 5 }] };
        RollPlan plan = StrikePlanner.Run(new RollRequest
        {
            Layout = RollCases.Squares,
            Roll = roll,
            RepeatsPerStrike = 2,
            GuidePlayMm = 0,
            FromMm = 0,
        });

        Assert.Equal((1, 1, 0), (plan.GoodPanels, plan.LostPanels(LossCause.Joint), plan.LostPanels(LossCause.Fault)));
    }

    [Fact]
    public void No_set_of_strikes_on_the_grid_has_more_good_panels()
    {
        int gains = 0;
        int moved = 0;
        foreach (int seed in Enumerable.Range(0, (int)Runs.Count(18)))
        {
            RollLayout layout = RollCases.Interlocked(seed);
            double repeat = layout.Bands[0].Repeat.LengthMm;
            int repeats = Enumerable.Range(1, 100).First(n => StrikePattern.Of(layout, n).LengthMm + layout.GapMm <= 2 * n * repeat);
            double feed = repeats * repeat;
            FeltRoll roll = RollCases.Random(seed, layout, Math.Min(3.3 * feed, 60));
            RollPlan plan = StrikePlanner.Run(new RollRequest
            {
                Layout = layout,
                Roll = roll,
                RepeatsPerStrike = repeats,
                GuidePlayMm = seed % 2,
                FromMm = 0,
                PastEnd = seed % 3 != 0,
            });

            Assert.Equal((seed, new EveryChain(plan).Best()), (seed, plan.GoodPanels));
            gains += plan.GoodPanels > plan.BackToBackGoodPanels ? 1 : 0;
            moved += plan.Strikes.Any(s => s.ShiftYMm != 0) ? 1 : 0;
        }

        Assert.True(gains > 3 && moved > 0, $"cases that ask something of the planner: {gains} gains, {moved} moved");
    }

    [Fact]
    public void Plans_of_random_rolls_pass_the_check_and_are_never_worse_than_strikes_in_line()
    {
        foreach (int seed in Enumerable.Range(100, (int)Runs.Count(12)))
        {
            RollLayout layout = RollCases.Interlocked(seed);
            RollRequest request = new()
            {
                Layout = layout,
                Roll = RollCases.Random(seed, layout, 150),
                RepeatsPerStrike = 1 + (seed % 3),
                GuidePlayMm = seed % 4,
                FromMm = seed % 5,
            };
            RollPlan plan = StrikePlanner.Run(request);

            Assert.Empty(RollPlanCheck.Verify(layout, request.Roll, RollCases.Stated(plan)).Violations);
            Assert.True(plan.GoodPanels >= plan.BackToBackGoodPanels);
        }
    }

    private static RollPlan Plan(RollLayout layout, FeltRoll roll) =>
        StrikePlanner.Run(new RollRequest { Layout = layout, Roll = roll, RepeatsPerStrike = 1, GuidePlayMm = 0, FromMm = 0 });
}
