using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Scan;
using Xunit;

namespace FeltNest.Tests.Layout.Scan;

/// <summary>What a die of squares of 10 on a repeat of 40 still cuts, by hand; trims of 5 below and 3 above.</summary>
public sealed class KeptDieTests
{
    [Fact]
    public void Of_the_windows_of_rows_the_narrowest_counts()
    {
        // Rows at 15, 45, 65: two of them are 40 high, or 30, three 60.
        IReadOnlyList<DropWidth> widths = KeptDie.Widths(
            Die([
                new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 0, YMm = 45, AngleDeg = 0 },
                new() { Part = 0, XMm = 0, YMm = 65, AngleDeg = 0 },
            ]), 200);
        Assert.Equal(
            [
                new() { Rows = 1, LeastWidthMm = 18, PanelsPerMetre = 25 }, new() { Rows = 2, LeastWidthMm = 38, PanelsPerMetre = 50 },
                new DropWidth { Rows = 3, LeastWidthMm = 68, PanelsPerMetre = 75 },
            ], widths.Select(Rounded));
    }

    [Fact]
    public void Of_windows_of_one_width_the_one_with_more_panels_counts()
    {
        // Rows of one, two and one panels, unevenly apart.
        IReadOnlyList<DropWidth> widths =
            KeptDie.Widths(
                Die([
                    new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 0, YMm = 35, AngleDeg = 0 },
                    new() { Part = 0, XMm = 20, YMm = 35, AngleDeg = 0 }, new() { Part = 0, XMm = 0, YMm = 70, AngleDeg = 0 },
                ]), 200);
        Assert.Equal([(1, 50.0), (2, 75.0), (3, 100.0)], widths.Select(w => (w.Rows, w.PanelsPerMetre)));
        Assert.Equal([18.0, 38, 73], widths.Select(w => Math.Round(w.LeastWidthMm, 9)));
    }

    [Fact]
    public void Panels_less_than_a_hundredth_apart_across_stand_in_one_row()
    {
        DropWidth one = Assert.Single(
            KeptDie.Widths(
                Die([new() { Part = 0, XMm = 0, YMm = 15.009, AngleDeg = 0 }, new() { Part = 0, XMm = 20, YMm = 15, AngleDeg = 0 }]), 500));
        Assert.Equal(new DropWidth { Rows = 1, LeastWidthMm = 18.009, PanelsPerMetre = 50 }, Rounded(one));
        Assert.Equal(
            [18, 18.011],
            KeptDie.Widths(
                Die([new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 20, YMm = 15.011, AngleDeg = 0 }]),
                18.015)
                .Select(w => Math.Round(w.LeastWidthMm, 9)));
    }

    [Theory]
    [InlineData(98, 5)]
    [InlineData(97.999, 4)]
    [InlineData(57.999, 2)]
    [InlineData(17.999, 0)]
    public void Equal_rows_equally_apart_go_on_up_to_the_width_asked(double most, int rows)
    {
        IReadOnlyList<DropWidth> widths = KeptDie.Widths(
            Die([
                new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 7, YMm = 35, AngleDeg = 0 },
                new() { Part = 0, XMm = 14, YMm = 55, AngleDeg = 0 },
            ]), most);
        Assert.Equal(rows, widths.Count);
        Assert.All(widths, w => Assert.Equal((18 + (20 * (w.Rows - 1)), 25.0 * w.Rows), (w.LeastWidthMm, w.PanelsPerMetre)));
    }

    [Theory]
    [InlineData(55.001, 0)]
    [InlineData(55, 5)]
    public void Rows_that_differ_in_step_or_height_do_not_go_on(double y, double angle) =>
        Assert.Equal(
            3,
            KeptDie.Widths(
                Die([
                    new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 7, YMm = 35, AngleDeg = 0 },
                    new() { Part = 0, XMm = 14, YMm = y, AngleDeg = angle },
                ]), 500).Count);

    [Fact]
    public void Rows_of_unlike_numbers_of_panels_do_not_go_on() =>
        Assert.Equal(
            3,
            KeptDie.Widths(
                Die([
                    new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 7, YMm = 35, AngleDeg = 0 },
                    new() { Part = 0, XMm = 14, YMm = 55, AngleDeg = 0 }, new() { Part = 0, XMm = 34, YMm = 55, AngleDeg = 0 },
                ]), 500).Count);

    [Fact]
    public void Rows_of_two_panels_go_on_with_two_panels_each() => Assert.Equal(
        [50, 100, 150, 200],
        KeptDie.Widths(
            Die([
                new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 20, YMm = 15, AngleDeg = 0 },
                new() { Part = 0, XMm = 7, YMm = 35, AngleDeg = 0 }, new() { Part = 0, XMm = 27, YMm = 35, AngleDeg = 0 },
            ]), 78)
            .Select(w => w.PanelsPerMetre));

    [Fact]
    public void A_single_row_does_not_go_on() =>
        Assert.Single(KeptDie.Widths(Die([new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }]), 500));

    [Theory]
    [InlineData(17.999, 0)]
    [InlineData(18, 25)]
    [InlineData(37.999, 25)]
    [InlineData(38, 50)]
    [InlineData(67.999, 50)]
    [InlineData(68, 75)]
    public void On_a_width_the_window_with_the_most_panels_is_cut(double width, double perMetre) =>
        Assert.Equal(
            perMetre,
            KeptDie.PanelsPerMetreAt(
                Die([
                    new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }, new() { Part = 0, XMm = 0, YMm = 45, AngleDeg = 0 },
                    new() { Part = 0, XMm = 0, YMm = 65, AngleDeg = 0 },
                ]), width));

    [Fact]
    public void Bands_count_with_their_own_repeats_and_have_no_drop_widths()
    {
        RollLayout die = Die([new() { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }]);
        RollLayout two = die with
        {
            Bands = [die.Bands[0], new LayoutBand
        {
            YFromMm = 25,
            YToMm = 45,
            Repeat = new LayoutRepeat(20, [new() { Part = 0, XMm = 0, YMm = 35, AngleDeg = 0 }]),
        }]
        };
        Assert.Equal((75.0, 50.0), (KeptDie.PanelsPerMetreAt(two, 38), KeptDie.PanelsPerMetreAt(two, 37)));
        Assert.Equal(AskedFor.KeptDie, Assert.Throws<InputException>(() => KeptDie.Widths(two, 500)).Asked);
    }

    private static DropWidth Rounded(DropWidth w) => w with { LeastWidthMm = Math.Round(w.LeastWidthMm, 9) };

    private static RollLayout Die(PlacedPanel[] panels) => new()
    {
        Parts = [Shapes.Part(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10))],
        RollWidthMm = 200,
        Trims = new EdgeTrims { LowerMm = 5, UpperMm = 3 },
        GapMm = 2,
        Rules = new LayoutRules(null, 0, RowRule.Any, false),
        Bands = [new LayoutBand { YFromMm = 5, YToMm = 197, Repeat = new LayoutRepeat(40, panels) }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };
}
