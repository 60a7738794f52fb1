using FeltNest.Layout;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Limits;

/// <summary>Runs of cloth between stripes and trims, by hand: a roll of 100 with trims of 5 and 10, so cloth from 5 to 90, and a gap of
/// 4.</summary>
public sealed class FreeClothTests
{
    private static readonly LayoutRequest Request =
        Shapes.Request(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10), 100, gap: 4) with { Trims = new EdgeTrims { LowerMm = 5, UpperMm = 10 } };

    [Fact]
    public void Stripes_split_the_cloth_whatever_their_order() =>
        Assert.Equal([(5, 20), (30, 50), (60, 90)], Runs(new() { YFromMm = 50, YToMm = 60 }, new() { YFromMm = 20, YToMm = 30 }));

    [Fact]
    public void A_stripe_within_another_and_one_beside_it_change_nothing() =>
        Assert.Equal(
            [(5, 20), (50, 90)],
            Runs(new() { YFromMm = 20, YToMm = 40 }, new() { YFromMm = 25, YToMm = 30 }, new() { YFromMm = 40, YToMm = 50 }));

    [Fact]
    public void A_stripe_narrower_than_the_gap_takes_the_gap() =>
        Assert.Equal([(5, 38.5), (42.5, 90)], Runs(new ForbiddenStrip { YFromMm = 40, YToMm = 41 }));

    [Fact]
    public void A_stripe_as_wide_as_the_gap_takes_itself() =>
        Assert.Equal([(5, 40), (44, 90)], Runs(new ForbiddenStrip { YFromMm = 40, YToMm = 44 }));

    [Theory]
    [InlineData(0, 5, 5, 90)]
    [InlineData(0, 8, 8, 90)]
    [InlineData(5, 9, 9, 90)]
    [InlineData(84, 92, 5, 84)]
    [InlineData(90, 100, 5, 90)]
    [InlineData(92, 97, 5, 90)]
    [InlineData(91, 92, 5, 90)]
    [InlineData(3, 4, 5, 90)]
    public void A_stripe_at_an_edge_leaves_one_run(double from, double to, double low, double high) =>
        Assert.Equal([(low, high)], Runs(new ForbiddenStrip { YFromMm = from, YToMm = to }));

    [Fact]
    public void Two_stripes_in_the_upper_trim_leave_the_cloth_as_it_is() =>
        Assert.Equal([(5, 90)], Runs(new() { YFromMm = 91, YToMm = 95 }, new() { YFromMm = 96, YToMm = 100 }));

    [Fact]
    public void Stripes_over_all_of_the_cloth_leave_no_run() =>
        Assert.Empty(Runs(new() { YFromMm = 0, YToMm = 50 }, new() { YFromMm = 50, YToMm = 95 }));

    [Fact]
    public void A_run_is_a_roll_of_the_same_width_with_wider_trims()
    {
        LayoutRequest run =
            FreeCloth.Run(Request with { Rules = Request.Rules with { Forbidden = [new() { YFromMm = 20, YToMm = 30 }] } }, 30, 88);
        Assert.Equal(
            (100, new EdgeTrims { LowerMm = 30, UpperMm = 12 }, (30, 88), 58), (run.RollWidthMm, run.Trims, run.Usable, run.UsableWidthMm));
        Assert.Empty(run.Rules.Forbidden);
    }

    [Fact]
    public void Trims_are_equal_or_not() =>
        Assert.Equal(
            (true, false, 15.0),
            ((EdgeTrims.Both(7)).AreEqual, new EdgeTrims { LowerMm = 5, UpperMm = 10 }.AreEqual, Request.Trims.TotalMm));

    private static IReadOnlyList<(double Low, double High)> Runs(params ForbiddenStrip[] stripes) =>
        FreeCloth.Of(Request with { Rules = Request.Rules with { Forbidden = stripes } });
}
