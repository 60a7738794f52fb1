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
    private static readonly RollLayout Squares = new()
    {
        Parts = [Shapes.Part(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10))],
        RollWidthMm = 50,
        Trims = EdgeTrims.Both(5),
        GapMm = 2,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Bands = [new LayoutBand
        {
            YFromMm = 5,
            YToMm = 45,
            Repeat = new LayoutRepeat(
                40,
                [
                    new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 20, YMm = 15, AngleDeg = 0 },
                    new() { Part = 0, XMm = 0, YMm = 35, AngleDeg = 0 }, new() { Part = 0, XMm = 20, YMm = 35, AngleDeg = 0 },
                ]),
        }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };

    [Fact]
    public void A_sound_lay_with_its_die_passes() =>
        Assert.Empty(Violations(Struck(2, 2, 0, 20), new DieLimit { MostPanels = 2, BedLengthMm = 30, BedWidthMm = 10 }));

    [Fact]
    public void A_panel_in_a_forbidden_stripe_is_named()
    {
        LayoutRules rules = Squares.Rules with { Forbidden = [new ForbiddenStrip { YFromMm = 18, YToMm = 21 }] };
        Assert.Contains(
            LayoutCheck.Verify(Squares with { Rules = rules }).Violations, v => v.Contains("forbidden stripe", StringComparison.Ordinal));
    }

    [Fact]
    public void A_repeat_below_the_least_is_named()
    {
        LayoutRules rules = Squares.Rules with { LeastRepeatMm = 41 };
        Assert.Contains(
            LayoutCheck.Verify(Squares with { Rules = rules }).Violations,
            v => v.Contains("shorter than the least", StringComparison.Ordinal));
    }

    [Fact]
    public void More_bands_than_allowed_are_named()
    {
        LayoutBand low = new()
        {
            YFromMm = 5,
            YToMm = 25,
            Repeat = new LayoutRepeat(20, [new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }]),
        };
        LayoutBand high = new()
        {
            YFromMm = 25,
            YToMm = 45,
            Repeat = new LayoutRepeat(30, [new() { Part = 0, XMm = 0, YMm = 35, AngleDeg = 0 }]),
        };
        RollLayout two = Squares with { Bands = [low, high] };
        Assert.Contains(LayoutCheck.Verify(two).Violations, v => v.Contains("1 allowed", StringComparison.Ordinal));
        Assert.Empty(LayoutCheck.Verify(two with { Rules = two.Rules with { Bands = 2 } }).Violations);
    }

    [Theory]
    [InlineData(2, 2, 0, 21, "not cut by strike")]
    [InlineData(3, 1, 0, 0, "does not make a repeat")]
    [InlineData(4, 1, 0, 0, "holds 4 panels")]
    public void A_die_that_does_not_cut_the_repeat_is_named(int panels, int across, double x, double y, string words) =>
        Assert.Contains(
            Violations(Struck(panels, across, x, y), new DieLimit { MostPanels = 2, BedLengthMm = null, BedWidthMm = null }),
            v => v.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void A_die_larger_than_its_bed_is_named() =>
        Assert.Contains(
            Violations(Struck(2, 2, 0, 20), new DieLimit { MostPanels = 2, BedLengthMm = 29, BedWidthMm = 10 }),
            v => v.Contains("the bed has", StringComparison.Ordinal));

    // The rows of squares reach from 10 to 20 and from 30 to 40.
    [Theory]
    [InlineData(0, 10, null)]
    [InlineData(20, 30, null)]
    [InlineData(40, 50, null)]
    [InlineData(
        0, 10.001,
        "panel 1: reaches from 10 to 20 mm across, into the forbidden stripe 0 to 10.001|panel 2: reaches from 10 to 20 mm across, into "
            + "the forbidden stripe 0 to 10.001")]
    [InlineData(
        39.999, 50,
        "panel 3: reaches from 30 to 40 mm across, into the forbidden stripe 39.999 to 50|panel 4: reaches from 30 to 40 mm across, "
            + "into the forbidden stripe 39.999 to 50")]
    public void A_stripe_is_met_from_below_and_from_above(double from, double to, string? lines)
    {
        RollLayout layout = Squares with { Rules = Squares.Rules with { Forbidden = [new ForbiddenStrip { YFromMm = from, YToMm = to }] } };
        Assert.Equal(lines?.Split('|') ?? [], LayoutCheck.Verify(layout).Violations);
    }

    [Theory]
    [InlineData(25.001, 14.999, 0)]
    [InlineData(24.999, 15.001, 1)]
    public void A_turned_panel_reaches_as_far_across_as_its_corners(double above, double below, int lines)
    {
        // A wedge with corners (0, 0), (20, 0), (0, 10) at 30 degrees: its corners stand 0, 20 sin 30 = 10 and 10 cos 30 = 8.66 above its
        // origin at 15.
        RollLayout layout = Lone(
            new PlacedPanel { Part = 0, XMm = 0, YMm = 15, AngleDeg = 30 },
            new DieLimit { MostPanels = null, BedLengthMm = null, BedWidthMm = null });
        Assert.Equal(lines, Stripes(layout, above, 40));
        Assert.Equal(lines, Stripes(layout, 0, below));

        static int Stripes(RollLayout layout, double from, double to) =>
            LayoutCheck.Verify(
                layout with
                {
                    Rules = layout.Rules with { Forbidden = [new ForbiddenStrip { YFromMm = from, YToMm = to }] },
                }).Violations.Count;
    }

    [Theory]
    [InlineData(22.32, 10.0, 0)]
    [InlineData(22.32, 9.999, 1)]
    [InlineData(22.319, 10.0, 1)]
    [InlineData(null, 10.0, 0)]
    [InlineData(22.321, null, 0)]
    [InlineData(null, 9.9, 1)]
    [InlineData(22.3, null, 1)]
    public void A_bed_is_asked_for_the_extent_of_the_turned_panel(double? length, double? width, int lines)
    {
        // The same wedge reaches from -10 sin 30 = -5 to 20 cos 30 = 17.3205 along: 22.3205 by 10.
        Assert.Equal(
            lines,
            LayoutCheck.Verify(
                Lone(
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 15, AngleDeg = 30 },
                    new DieLimit { MostPanels = null, BedLengthMm = length + 0.0005, BedWidthMm = width })).Violations.Count);

        // Half-turned it reaches as far; a quarter turn on, its length is its width.
        Assert.Equal(
            lines,
            LayoutCheck.Verify(
                Lone(
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 30, AngleDeg = 210 },
                    new DieLimit { MostPanels = null, BedLengthMm = length + 0.0005, BedWidthMm = width })).Violations.Count);
        Assert.Equal(
            lines,
            LayoutCheck.Verify(
                Lone(
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 15, AngleDeg = 120 },
                    new DieLimit { MostPanels = null, BedLengthMm = width, BedWidthMm = length + 0.0005 })).Violations.Count);
        Assert.Equal(
            lines,
            LayoutCheck.Verify(
                Lone(
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 40, AngleDeg = 300 },
                    new DieLimit { MostPanels = null, BedLengthMm = width, BedWidthMm = length + 0.0005 })).Violations.Count);
    }

    [Theory]
    [InlineData(13, 20, 0, 0)]
    [InlineData(-27, 20, 0, 0)]
    [InlineData(53, 20, 360, 0)]
    [InlineData(13.001, 20, 0, 2)]
    [InlineData(-13, 20, 0, 2)]
    [InlineData(13, 19.999, 0, 2)]
    [InlineData(13, 20, 90, 2)]
    public void A_strike_cuts_its_panels_wherever_the_repeat_begins(double x, double y, double angle, int lines)
    {
        // Rows at 15 and 35, the upper one 13 further along; the die is the lower row.
        LayoutRepeat repeat = new(
            40,
            [
                new() { Part = 0, XMm = 3, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 23, YMm = 15, AngleDeg = 0 },
                new() { Part = 0, XMm = 16, YMm = 35, AngleDeg = angle }, new() { Part = 0, XMm = 36, YMm = 35, AngleDeg = angle },
            ])
        {
            Strike = new StrikeBlock { Panels = 2, Places = [default, new Point2(x, y)], LengthMm = 30, WidthMm = 10 },
        };
        Assert.Equal(
            lines,
            Violations(
                Squares with { Bands = [Squares.Bands[0] with { Repeat = repeat }] },
                new DieLimit { MostPanels = 2, BedLengthMm = 30, BedWidthMm = 10 })
                .Count(line => line.Contains("is not cut by strike 2", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_strike_cuts_panels_at_the_angle_of_its_die()
    {
        LayoutRepeat repeat = new(
            40, [new() { Part = 0, XMm = 3, YMm = 15, AngleDeg = 90 }, new() { Part = 0, XMm = 16, YMm = 35, AngleDeg = 450 }])
        {
            Strike = new StrikeBlock { Panels = 1, Places = [default, new Point2(13, 20)], LengthMm = 10, WidthMm = 10 },
        };
        Assert.Empty(
            Violations(
                Squares with { Bands = [Squares.Bands[0] with { Repeat = repeat }] },
                new DieLimit { MostPanels = 1, BedLengthMm = 10, BedWidthMm = 10 }));
    }

    [Fact]
    public void A_repeat_just_as_long_as_the_least_is_kept() =>
        Assert.Empty(LayoutCheck.Verify(Squares with { Rules = Squares.Rules with { LeastRepeatMm = 40 } }).Violations);

    [Fact]
    public void A_strike_cuts_no_other_part()
    {
        RollLayout layout = Struck(2, 2, 0, 20) with { Parts = [Squares.Parts[0], Squares.Parts[0]] };
        PlacedPanel[] panels = [.. layout.Bands[0].Repeat.Panels];
        panels[3] = panels[3] with { Part = 1 };
        Assert.Contains(
            "panel 4 is not cut by strike 2",
            Assert.Single(
                Violations(
                    layout with { Bands = [layout.Bands[0] with { Repeat = layout.Bands[0].Repeat with { Panels = panels } }] },
                    new DieLimit { MostPanels = 2, BedLengthMm = 30, BedWidthMm = 10 })), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(14, 0)]
    [InlineData(13.999, 1)]
    public void A_die_may_lie_over_the_end_of_the_repeat(double bed, int lines)
    {
        // Squares at 2 and 38 of 40 are 4 apart over the end: 14 in all, though 46 as written.
        LayoutRepeat repeat = new(
            40, [new() { Part = 0, XMm = 2, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 38, YMm = 35, AngleDeg = 0 }]);
        Assert.Equal(
            lines,
            Violations(
                Squares with { Bands = [Squares.Bands[0] with { Repeat = repeat }] },
                new DieLimit { MostPanels = 2, BedLengthMm = bed, BedWidthMm = 30 }).Count);
        Assert.Single(
            Violations(
                Squares with { Bands = [Squares.Bands[0] with { Repeat = repeat }] },
                new DieLimit { MostPanels = 2, BedLengthMm = 14, BedWidthMm = 29.999 }));
    }

    private static RollLayout Lone(PlacedPanel panel, DieLimit die) => Squares with
    {
        Parts = [Shapes.Part(Outline.From([new(0, 0), new(20, 0), new(0, 10)]))],
        Rules = Squares.Rules with { Die = die },
        Bands = [Squares.Bands[0] with { Repeat = new LayoutRepeat(40, [panel]) }],
    };

    private static RollLayout Struck(int panels, int across, double x, double y)
    {
        LayoutBand band = Squares.Bands[0];
        return Squares with
        {
            Bands =
            [
                band with
                {
                    Repeat = band.Repeat with
                    {
                        Strike = new StrikeBlock
                        {
                            Panels = panels,
                            Places = [.. Enumerable.Range(0, across).Select(k => new Point2(k * x, k * y))],
                            LengthMm = 0,
                            WidthMm = 0,
                        },
                    },
                },
            ],
        };
    }

    private static IReadOnlyList<string> Violations(RollLayout layout, DieLimit die) =>
        LayoutCheck.Verify(layout with { Rules = layout.Rules with { Die = die } }).Violations;
}
