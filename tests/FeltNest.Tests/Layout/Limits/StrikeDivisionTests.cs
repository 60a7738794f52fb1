using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Limits;

/// <summary>Repeats divided into strikes by hand: squares of 10 on a repeat of 40.</summary>
public sealed class StrikeDivisionTests
{
    private static readonly LayoutPart Square = Shapes.Part(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10));
    private static readonly LayoutPart Bar = Shapes.Part(Shapes.Of(1, 0, 0, 20, 0, 20, 10, 0, 10));
    private static readonly PlacedPanel[] TwoRows =
    [
        new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 20, YMm = 35, AngleDeg = 0 },
    ];

    // Of each two rows the upper panel stands at another angle, so no single panel is a die; the upper pair's second panel is written a
    // repeat back.
    private static readonly PlacedPanel[] Pairs =
    [
        new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 12, YMm = 35, AngleDeg = 30 },
        new() { Part = 0, XMm = 30, YMm = 55, AngleDeg = 360 }, new() { Part = 0, XMm = 2, YMm = 75, AngleDeg = 30 },
    ];

    [Theory]
    [InlineData(0, 1)]
    [InlineData(40, 1)]
    [InlineData(40.001, 2)]
    [InlineData(80, 2)]
    [InlineData(100, 3)]
    public void A_repeat_is_written_as_often_as_its_least_length_asks(double least, int times) =>
        Assert.Equal(times, StrikeDivision.Times(new LayoutRepeat(40, TwoRows), least));

    [Fact]
    public void Without_a_limit_the_whole_repeat_is_the_die()
    {
        StrikeBlock die = Die(TwoRows, 1, new DieLimit { MostPanels = null, BedLengthMm = null, BedWidthMm = null })!;
        Assert.Equal((2, 30, 30), (die.Panels, Rounded(die.LengthMm), Rounded(die.WidthMm)));
        Assert.Equal([new Point2(0, 0)], die.Places);
    }

    [Fact]
    public void One_panel_is_struck_at_the_places_of_all()
    {
        LayoutRepeat struck = Divided(TwoRows, 1, new DieLimit { MostPanels = 1, BedLengthMm = null, BedWidthMm = null })!;
        Assert.Equal((1, 10, 10), (struck.Strike!.Panels, Rounded(struck.Strike.LengthMm), Rounded(struck.Strike.WidthMm)));
        Assert.Equal([new Point2(0, 0), new Point2(20, 20)], struck.Strike.Places);
        Assert.Equal(TwoRows, struck.Panels);
    }

    [Fact]
    public void A_die_is_as_short_as_the_copies_of_its_panels_allow()
    {
        // At x = 2 and 38 the panels stand 36 apart, and 4 apart over the end of the repeat.
        Assert.Equal(
            14,
            Die(
                [new() { Part = 0, XMm = 2, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 38, YMm = 35, AngleDeg = 0 }], 1,
                new DieLimit { MostPanels = null, BedLengthMm = null, BedWidthMm = null })!.LengthMm, 1e-9);

        // At 0, 10 and 25 the widest opening is the one of 15 on either side of 25; 40 - 15 + 10 is left.
        Assert.Equal(
            35,
            Die(
                [
                    new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 10, YMm = 35, AngleDeg = 0 },
                    new() { Part = 0, XMm = 25, YMm = 55, AngleDeg = 0 },
                ], 1, new DieLimit { MostPanels = 3, BedLengthMm = null, BedWidthMm = null })!.LengthMm, 1e-9);
    }

    [Theory]
    [InlineData(4, 4)]
    [InlineData(3, 2)]
    [InlineData(2, 2)]
    [InlineData(1, 0)]
    public void The_fewest_strikes_that_keep_the_limit_are_taken(int most, int panels) =>
        Assert.Equal(panels, Die(Pairs, 1, new DieLimit { MostPanels = most, BedLengthMm = null, BedWidthMm = null })?.Panels ?? 0);

    [Fact]
    public void Groups_moved_alike_but_for_whole_repeats_are_one_die() =>
        Assert.Equal(
            [new Point2(0, 0), new Point2(30, 40)],
            Die(Pairs, 1, new DieLimit { MostPanels = 2, BedLengthMm = null, BedWidthMm = null })!.Places);

    [Theory]
    [InlineData(0, 1e-3, 0, 0)]
    [InlineData(0, 0, 1e-3, 0)]
    [InlineData(0, 0, 0, 1e-3)]
    [InlineData(1, 0, 0, 0)]
    public void A_panel_of_a_group_that_is_off_in_anything_makes_it_no_die(int part, double x, double y, double angle)
    {
        PlacedPanel last = Pairs[3];
        Assert.Null(
            Die(
                [.. Pairs.SkipLast(1), new() { Part = part, XMm = last.XMm + x, YMm = last.YMm + y, AngleDeg = last.AngleDeg + angle }], 1,
                new DieLimit { MostPanels = 2, BedLengthMm = null, BedWidthMm = null }));
    }

    [Fact]
    public void A_longer_repeat_asks_for_more_panels_of_every_die()
    {
        LayoutRepeat struck = Divided(TwoRows, 3, new DieLimit { MostPanels = 3, BedLengthMm = null, BedWidthMm = null })!;
        Assert.Equal(120, struck.LengthMm);
        Assert.Equal([0, 40, 80, 20, 60, 100], struck.Panels.Select(p => p.XMm));
        Assert.Equal([15, 15, 15, 35, 35, 35], struck.Panels.Select(p => p.YMm));
        Assert.Equal((3, 90, 10), (struck.Strike!.Panels, Rounded(struck.Strike.LengthMm), Rounded(struck.Strike.WidthMm)));
        Assert.Null(Divided(TwoRows, 3, new DieLimit { MostPanels = 2, BedLengthMm = null, BedWidthMm = null }));
    }

    [Theory]
    [InlineData(30, 30, 2)]
    [InlineData(29.999, 30, 1)]
    [InlineData(30, 29.999, 1)]
    [InlineData(10, 10, 1)]
    [InlineData(9.999, 10, 0)]
    [InlineData(10, 9.999, 0)]
    public void A_bed_holds_the_die_or_divides_it(double length, double width, int panels) =>
        Assert.Equal(panels, Die(TwoRows, 1, new DieLimit { MostPanels = null, BedLengthMm = length, BedWidthMm = width })?.Panels ?? 0);

    [Fact]
    public void The_extent_of_a_die_is_that_of_its_panels_as_they_are_turned()
    {
        // A bar of 20 by 10 stands upright at 90 degrees; at 30 it is 20 cos 30 + 10 sin 30 long and 20 sin 30 + 10 cos 30 high.
        StrikeBlock up =
            StrikeDivision.Divided(
                new LayoutRepeat(40, [new() { Part = 1, XMm = 0, YMm = 15, AngleDeg = 90 }]), 1, [Square, Bar],
                new DieLimit { MostPanels = 1, BedLengthMm = null, BedWidthMm = null })!.Strike!;
        Assert.Equal((10, 20), (Rounded(up.LengthMm), Rounded(up.WidthMm)));
        StrikeBlock askew =
            StrikeDivision.Divided(
                new LayoutRepeat(40, [new() { Part = 1, XMm = 0, YMm = 15, AngleDeg = 30 }]), 1, [Square, Bar],
                new DieLimit { MostPanels = 1, BedLengthMm = null, BedWidthMm = null })!.Strike!;
        Assert.Equal((10 * Math.Sqrt(3)) + 5, askew.LengthMm, 1e-9);
        Assert.Equal(10 + (5 * Math.Sqrt(3)), askew.WidthMm, 1e-9);
    }

    private static double Rounded(double mm) => Math.Round(mm, 9);

    private static StrikeBlock? Die(PlacedPanel[] panels, int times, DieLimit limit) => Divided(panels, times, limit)?.Strike;

    private static LayoutRepeat? Divided(PlacedPanel[] panels, int times, DieLimit limit) =>
        StrikeDivision.Divided(new LayoutRepeat(40, panels), times, [Square, Square], limit);
}
