using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Limits;

/// <summary>What the shop's cloth and dies allow is kept, and what contradicts itself is said.</summary>
public sealed class ShopRuleTests
{
    private static readonly Outline Bone = Shapes.DogBone(2.3, 0.7, 24, 25);
    private static readonly LayoutRequest Request = Shapes.Request(Bone, 700, gap: 4, edge: 15);

    [Fact]
    public void Only_the_sum_of_unequal_trims_counts()
    {
        RollLayout equal = Shapes.Lay(Request);
        RollLayout unequal = Shapes.Lay(Request with { Trims = new EdgeTrims { LowerMm = 5, UpperMm = 25 } });
        Assert.Equal(equal.PanelsPerMetre, unequal.PanelsPerMetre, 1e-6);
        Assert.Equal(5, unequal.Bands[0].YFromMm);
        Assert.Equal(675, unequal.Bands[0].YToMm);
    }

    [Fact]
    public void A_forbidden_stripe_stays_free_and_one_at_the_edge_is_an_edge_trim()
    {
        RollLayout split = Shapes.Lay(Forbidding(300, 320));
        RollLayout edge = Shapes.Lay(Forbidding(600, 700));
        RollLayout trimmed = Shapes.Lay(Request with { RollWidthMm = 615 });
        foreach (PlacedPanel panel in split.Bands[0].Repeat.Panels)
        {
            Outline turned = Bone.Turned(double.DegreesToRadians(panel.AngleDeg));
            Assert.True(panel.YMm + turned.MaxY <= 300 + 1e-6 || panel.YMm + turned.MinY >= 320 - 1e-6);
        }

        // The same cloth, so the same panels a metre.
        Assert.Equal(trimmed.PanelsPerMetre, edge.PanelsPerMetre, 1e-6);
        Assert.True(split.PanelsPerMetre < Shapes.Lay(Request).PanelsPerMetre);
    }

    [Fact]
    public void A_stripe_narrower_than_the_gap_still_keeps_rows_on_both_sides_apart()
    {
        RollLayout layout = Shapes.Lay(Forbidding(330, 331));
        Assert.Empty(LayoutCheck.Verify(layout).Violations);
        Assert.Equal(0, layout.Bands[0].Repeat.Panels.Count(p => p.YMm is > 325 and < 336));
    }

    [Fact]
    public void Two_dies_may_serve_the_two_sides_of_a_stripe()
    {
        LayoutRequest request = Forbidding(200, 260);
        double one = Shapes.Lay(request).PanelsPerMetre;
        RollLayout two = Shapes.Lay(request with { Rules = request.Rules with { Bands = 2 } });
        Assert.True(two.PanelsPerMetre >= one * (1 - 1e-9));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(3, 3)]
    public void A_die_of_few_panels_cuts_parallel_rows_in_equal_strikes(int most, int expectedAtMost)
    {
        RollLayout free = Shapes.Lay(Request);
        RollLayout limited = Shapes.Lay(With(new DieLimit { MostPanels = most, BedLengthMm = null, BedWidthMm = null }));
        StrikeBlock strike = limited.Bands[0].Repeat.Strike!;
        Assert.InRange(strike.Panels, 1, expectedAtMost);
        Assert.Equal(limited.Bands[0].Repeat.Panels.Count, strike.Panels * strike.Places.Count);

        // A single panel moved by the lattice's own steps is a die too, so nothing is lost.
        Assert.Equal(free.PanelsPerMetre, limited.PanelsPerMetre, 1e-6);
    }

    [Fact]
    public void A_short_bed_turns_the_panels_until_they_fit_it()
    {
        RollLayout layout = Shapes.Lay(With(new DieLimit { MostPanels = null, BedLengthMm = 120, BedWidthMm = 400 }));
        StrikeBlock strike = layout.Bands[0].Repeat.Strike!;
        Assert.InRange(strike.LengthMm, 0, 120);
        Assert.InRange(strike.WidthMm, 0, 400);
    }

    [Fact]
    public void A_least_repeat_is_the_same_lay_written_several_times()
    {
        RollLayout one = Shapes.Lay(Request);
        RollLayout more = Shapes.Lay(Request with { Rules = Request.Rules with { LeastRepeatMm = 500 } });
        Assert.InRange(more.Bands[0].Repeat.LengthMm, 500, 500 + one.Bands[0].Repeat.LengthMm);
        Assert.Equal(one.PanelsPerMetre, more.PanelsPerMetre, 1e-9);
    }

    [Fact]
    public void A_die_and_a_least_repeat_that_contradict_are_both_named()
    {
        LayoutRequest request = With(new DieLimit { MostPanels = 1, BedLengthMm = null, BedWidthMm = null });
        NoAnswerException error =
            Assert.Throws<NoAnswerException>(() => Shapes.Lay(request with { Rules = request.Rules with { LeastRepeatMm = 500 } }));
        Assert.Contains("at most 1 panels", error.Message, StringComparison.Ordinal);
        Assert.Contains("least repeat of 500 mm", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stripe_that_leaves_no_room_is_said_and_one_outside_the_roll_refused()
    {
        Assert.Contains(
            "forbidden stripes leave no room", Assert.Throws<NoAnswerException>(() => Shapes.Lay(Forbidding(40, 660))).Message,
            StringComparison.Ordinal);
        Assert.Equal(AskedFor.ForbiddenStripes, Assert.Throws<InputException>(() => Shapes.Lay(Forbidding(650, 710))).Asked);
    }

    [Fact]
    public void A_bed_that_holds_no_panel_and_a_gap_that_swallows_it_are_refused()
    {
        Assert.Contains(
            "die bed",
            Assert.Throws<NoAnswerException>(() =>
                Shapes.Lay(With(new DieLimit { MostPanels = null, BedLengthMm = 60, BedWidthMm = 60 }))).Message,
            StringComparison.Ordinal);
        Assert.Equal(AskedFor.Gap, Assert.Throws<InputException>(() => Shapes.Lay(Request with { GapMm = 60 })).Asked);
    }

    private static LayoutRequest Forbidding(double from, double to) =>
        Request with { Rules = Request.Rules with { Forbidden = [new ForbiddenStrip { YFromMm = from, YToMm = to }] } };

    private static LayoutRequest With(DieLimit die) => Request with { Rules = Request.Rules with { Die = die } };
}
