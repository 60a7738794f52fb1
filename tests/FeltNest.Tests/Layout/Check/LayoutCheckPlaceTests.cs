using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using Xunit;

namespace FeltNest.Tests.Layout.Check;

/// <summary>Where the check sees a part that is no mirror of itself: extents and distances worked out by hand.</summary>
public sealed class LayoutCheckPlaceTests
{
    // Corners (0, 0), (30, 0), (0, 10): turned by an angle a the part reaches from 0 to 30 sin a across for a from the slope's 18.4 degrees to 90, and from -10 sin a to 30 cos a along.
    private static readonly Outline Wedge = Outline.From([new(0, 0), new(30, 0), new(0, 10)]);

    [Theory]
    [InlineData(30, 15)]
    [InlineData(60, 25.980762113533)]
    [InlineData(390, 15)]
    public void A_turned_part_reaches_across_as_far_as_its_corners_say(double angle, double height)
    {
        Assert.Empty(Lay(60, 20 + height, angle, 15).Violations);
        Assert.Contains("reaches from 14.999 to", Assert.Single(Lay(60, 20 + height, angle, 14.999).Violations), StringComparison.Ordinal);
        Assert.Contains("panel 0: reaches from 15.001 to", Assert.Single(Lay(60, 20 + height, angle, 15.001).Violations), StringComparison.Ordinal);
    }

    // Turned by 90 degrees its long side stands at x = 0 and its tip at -10; the next copy's tip is 10 short of a repeat away, 30 short of it unturned, and turned by 180 the long sides mirror that.
    [Theory]
    [InlineData(0, 34, 4)]
    [InlineData(90, 14, 4)]
    [InlineData(90, 14.5, 4.5)]
    [InlineData(180, 34, 4)]
    [InlineData(-90, 14, 4)]
    public void The_gap_to_the_next_copy_is_what_is_left_of_the_repeat(double angle, double repeat, double gap) =>
        Assert.Equal(gap, Lay(repeat, 80, angle, 40).LeastGapMm, 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(-7)]
    [InlineData(100_000)]
    public void A_panel_written_some_repeats_away_is_the_same_panel(int repeats)
    {
        LayoutVerdict verdict = Verify(80, 50, new PlacedPanel(0, 0, 20, 0), new PlacedPanel(0, 11 + (repeats * 50.0), 35, 0));

        // The upper wedge's long side is 15 above the lower one's; the nearest places are its corner (11, 35) and the slope through (0, 30) and (30, 20), the line x + 3 y = 90.
        Assert.Equal((11 + (3 * 35) - 90) / Math.Sqrt(10), verdict.LeastGapMm, 1e-9);
        Assert.Empty(verdict.Violations);
    }

    [Fact]
    public void Of_several_gaps_the_least_is_told_and_every_pair_is_counted()
    {
        // Squares of 10 in one row, 16, 17 and 19 apart on a repeat of 52: gaps 6, 7 and 9.
        Outline square = Outline.From([new(-5, -5), new(5, -5), new(5, 5), new(-5, 5)]);
        LayoutVerdict verdict = LayoutCheck.Verify(Of(square, 40, 52, 5, new PlacedPanel(0, 0, 20, 0), new PlacedPanel(0, 16, 20, 0), new PlacedPanel(0, 33, 20, 0)));

        // Looked at are those whose boxes come within the gap and 1 mm: only the pair 16 apart.
        Assert.Equal((6, 1), (Math.Round(verdict.LeastGapMm, 9), verdict.Pairs));
        Assert.Empty(verdict.Violations);
    }

    [Theory]
    [InlineData(10, 0)]
    [InlineData(9.999, 1)]
    [InlineData(10.001, 1)]
    public void The_trims_may_differ_and_each_holds_on_its_side(double y, int violations)
    {
        // The wedge is 10 high, and so is the cloth between trims of 10 and 25 on a roll of 45.
        RollLayout layout = Of(Wedge, 45, 40, 4, new PlacedPanel(0, 0, y, 0)) with { Trims = new(10, 25) };
        Assert.Equal(violations, LayoutCheck.Verify(layout with { Bands = [layout.Bands[0] with { YFromMm = 0, YToMm = 45 }] }).Violations.Count);
    }

    [Fact]
    public void A_panel_beyond_its_band_is_caught_though_it_lies_within_the_trims()
    {
        RollLayout layout = Of(Wedge, 80, 40, 4, new PlacedPanel(0, 0, 20, 0));
        Assert.Empty(LayoutCheck.Verify(layout with { Bands = [layout.Bands[0] with { YFromMm = 20, YToMm = 30 }] }).Violations);
        Assert.Single(LayoutCheck.Verify(layout with { Bands = [layout.Bands[0] with { YFromMm = 20.001, YToMm = 60 }] }).Violations);
        Assert.Single(LayoutCheck.Verify(layout with { Bands = [layout.Bands[0] with { YFromMm = 15, YToMm = 29.999 }] }).Violations);
    }

    [Fact]
    public void The_warp_angle_has_a_sign()
    {
        LayoutRules held = new(30, 1, RowRule.Any, false);
        Assert.Empty(LayoutCheck.Verify(Of(Wedge, 80, 60, 4, new PlacedPanel(0, 0, 40, 210.5)) with { Rules = held }).Violations);
        Assert.Contains("off the warp angle 30", Assert.Single(LayoutCheck.Verify(Of(Wedge, 80, 60, 4, new PlacedPanel(0, 0, 40, -30)) with { Rules = held }).Violations), StringComparison.Ordinal);
    }

    private static LayoutVerdict Lay(double repeat, double width, double angle, double y) => Verify(width + 10, repeat, new PlacedPanel(0, 0, y, angle));

    private static LayoutVerdict Verify(double width, double repeat, params PlacedPanel[] panels) => LayoutCheck.Verify(Of(Wedge, width, repeat, 4, panels));

    private static RollLayout Of(Outline part, double width, double repeat, double gap, params PlacedPanel[] panels) => new(
        [new LayoutPart("part", null, part, null, null, null)], width, 15, gap, new LayoutRules(null, 0, RowRule.Any, false), [new LayoutBand(15, width - 15, new LayoutRepeat(repeat, panels))],
        new SearchRecord(1, 1, false, "by hand", null, 0, 0, null));
}
