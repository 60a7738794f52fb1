using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Check;

/// <summary>The check finds what breaks the rules on cloth and dies.</summary>
public sealed class ShopCheckTests
{
    // Four squares of 10 mm, 20 mm apart both ways.
    private static readonly RollLayout Squares = new(
        [Shapes.Part(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10))], 50, 5, 2, new LayoutRules(null, 0, RowRule.Same, false),
        [new LayoutBand(5, 45, new LayoutRepeat(40, [new(0, 0, 15, 0), new(0, 20, 15, 0), new(0, 0, 35, 0), new(0, 20, 35, 0)]))],
        new SearchRecord(1, 1, false, "by hand", null, 0, 0, null));

    [Fact]
    public void A_sound_lay_with_its_die_passes() => Assert.Empty(Violations(Struck(2, 2, 0, 20), new DieLimit(2, 30, 10)));

    [Fact]
    public void A_panel_in_a_forbidden_stripe_is_named()
    {
        LayoutRules rules = Squares.Rules with { Forbidden = [new ForbiddenStrip(18, 21)] };
        Assert.Contains(LayoutCheck.Verify(Squares with { Rules = rules }).Violations, v => v.Contains("forbidden stripe", StringComparison.Ordinal));
    }

    [Fact]
    public void A_repeat_below_the_least_is_named()
    {
        LayoutRules rules = Squares.Rules with { LeastRepeatMm = 41 };
        Assert.Contains(LayoutCheck.Verify(Squares with { Rules = rules }).Violations, v => v.Contains("shorter than the least", StringComparison.Ordinal));
    }

    [Fact]
    public void More_bands_than_allowed_are_named()
    {
        LayoutBand low = new(5, 25, new LayoutRepeat(20, [new(0, 0, 15, 0)])), high = new(25, 45, new LayoutRepeat(30, [new(0, 0, 35, 0)]));
        RollLayout two = Squares with { Bands = [low, high] };
        Assert.Contains(LayoutCheck.Verify(two).Violations, v => v.Contains("1 allowed", StringComparison.Ordinal));
        Assert.Empty(LayoutCheck.Verify(two with { Rules = two.Rules with { Bands = 2 } }).Violations);
    }

    [Theory]
    [InlineData(2, 2, 0, 21, "not cut by strike")]
    [InlineData(3, 1, 0, 0, "does not make a repeat")]
    [InlineData(4, 1, 0, 0, "holds 4 panels")]
    public void A_die_that_does_not_cut_the_repeat_is_named(int panels, int across, double x, double y, string words) =>
        Assert.Contains(Violations(Struck(panels, across, x, y), new DieLimit(2, null, null)), v => v.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void A_die_larger_than_its_bed_is_named() =>
        Assert.Contains(Violations(Struck(2, 2, 0, 20), new DieLimit(2, 29, 10)), v => v.Contains("the bed has", StringComparison.Ordinal));

    private static RollLayout Struck(int panels, int across, double x, double y)
    {
        LayoutBand band = Squares.Bands[0];
        return Squares with { Bands = [band with { Repeat = band.Repeat with { Strike = new StrikeBlock(panels, [.. Enumerable.Range(0, across).Select(k => new Point2(k * x, k * y))], 0, 0) } }] };
    }

    private static IReadOnlyList<string> Violations(RollLayout layout, DieLimit die) => LayoutCheck.Verify(layout with { Rules = layout.Rules with { Die = die } }).Violations;
}
