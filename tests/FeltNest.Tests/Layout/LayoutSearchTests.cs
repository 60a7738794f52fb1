using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Tests.Geometry;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Layout;

public sealed class LayoutSearchTests
{
    private static readonly Outline Bone = Shapes.DogBone(2.3, 0.7, 24, 25);

    [Fact, Trait("tier", "long")]
    public void The_same_request_gives_the_same_layout_to_the_last_digit()
    {
        LayoutRequest request = Shapes.Request(Bone, 700, gap: 4, edge: 15, rows: RowRule.Any, effort: 2);
        LayoutRepeat first = Shapes.Lay(request).Bands[0].Repeat;
        LayoutRepeat second = Shapes.Lay(request).Bands[0].Repeat;
        Assert.Equal(first.LengthMm, second.LengthMm);
        Assert.Equal(first.Panels, second.Panels);
    }

    [Fact]
    public void More_effort_never_gives_less()
    {
        double little = Shapes.Lay(Shapes.Request(Bone, 700, gap: 4)).PanelsPerMetre;
        double more = Shapes.Lay(Shapes.Request(Bone, 700, gap: 4, effort: 4)).PanelsPerMetre;
        Assert.True(more >= little * (1 - 1e-9));
    }

    [Theory, Trait("tier", "long")]
    [InlineData(0)]
    [InlineData(30)]
    [InlineData(90)]
    [InlineData(-45)]
    public void A_fixed_warp_angle_is_kept_by_every_panel(double warp)
    {
        RollLayout layout = Shapes.Lay(Shapes.Request(Bone, 700, gap: 4, warp: warp));
        Assert.All(layout.Bands[0].Repeat.Panels, p => Assert.Equal(0, Math.IEEERemainder(p.AngleDeg - warp, 180), 1e-9));
    }

    [Fact]
    public void A_warp_tolerance_may_be_used_and_is_not_exceeded()
    {
        LayoutRequest request = Shapes.Request(Bone, 700, gap: 4, warp: 0);
        RollLayout held = Shapes.Lay(request);
        RollLayout loose = Shapes.Lay(request with { Rules = request.Rules with { WarpToleranceDeg = 6 } });
        Assert.True(loose.PanelsPerMetre > held.PanelsPerMetre);
        Assert.All(loose.Bands[0].Repeat.Panels, p => Assert.InRange(Math.Abs(Math.IEEERemainder(p.AngleDeg, 180)), 0, 6 + 1e-6));
    }

    [Fact]
    public void One_way_lays_hold_no_half_turn_and_cost_a_part_that_needs_one()
    {
        // Triangles fill a strip head to tail; one way they leave half of it.
        Outline triangle = Shapes.Of(40, 0, 0, 2, 0, 1, 1.7);
        RollLayout turned = Shapes.Lay(Shapes.Request(triangle, 70));
        RollLayout oneWay = Shapes.Lay(Shapes.Request(triangle, 70, oneWay: true));
        Assert.True(turned.PanelsPerMetre > 1.5 * oneWay.PanelsPerMetre);
        Assert.Single(oneWay.Bands[0].Repeat.Panels.Select(p => Math.Round(p.AngleDeg, 6)).Distinct());
    }

    [Fact]
    public void A_single_row_of_triangles_lies_head_to_tail()
    {
        // Own derivation: an isosceles triangle of base 2a and height h in a strip of width h tiles it head to tail: one panel per a of
        // roll.
        Outline triangle = Shapes.Of(40, 0, 0, 2, 0, 1, 1.7);
        RollLayout layout = Shapes.Lay(Shapes.Request(triangle, 68, warp: 0, effort: 3));
        Assert.Equal(1000.0 / 40, layout.PanelsPerMetre, 1e-3);
    }

    [Fact]
    public void A_part_wider_than_the_roll_is_refused_with_a_width_that_works()
    {
        NoAnswerException refused = Assert.Throws<NoAnswerException>(() => Shapes.Lay(Shapes.Request(Bone, 60, edge: 15)));
        double works = double.Parse(refused.Message.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture);
        Assert.NotEmpty(Shapes.Lay(Shapes.Request(Bone, works, gap: 4, edge: 15)).Bands[0].Repeat.Panels);
        Assert.Throws<NoAnswerException>(() => Shapes.Lay(Shapes.Request(Bone, works - 0.02, gap: 4, edge: 15)));
    }

    [Fact]
    public void Alternate_rows_at_a_warp_angle_that_has_no_mirror_are_refused() =>
        Assert.Throws<NoAnswerException>(() => Shapes.Lay(Shapes.Request(Bone, 700, rows: RowRule.Alternate, warp: 30)));

    [Theory]
    [InlineData(0.05, 0, 4)]
    [InlineData(double.NaN, 0, 4)]
    [InlineData(700, -1, 4)]
    [InlineData(700, 0, -1)]
    [InlineData(700, 400, 4)]
    public void Numbers_out_of_range_are_refused(double width, double edge, double gap) =>
        Assert.Throws<InputException>(() => Shapes.Lay(Shapes.Request(Bone, width, gap, edge)));

    [Fact]
    public void A_search_stopped_at_once_still_gives_a_checked_layout_and_says_so()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        RollLayout layout = LayoutSearch.Run(Shapes.Request(Bone, 700, gap: 4, effort: 50), null, stop.Token);
        Assert.True(layout.Search.CutShort);
        Assert.Null(layout.Search.ProvedOnGrid);
        Assert.Empty(LayoutCheck.Verify(layout).Violations);
    }

    [Theory, Trait("tier", "long")]
    [InlineData(18, RowRule.Alternate)]
    [InlineData(39, RowRule.Any)]
    [InlineData(25, RowRule.Same)]
    public void Regular_polygons_whose_corners_all_touch_at_once_are_laid_too(int corners, RowRule rows)
    {
        RollLayout layout = Shapes.Lay(Shapes.Request(Shapes.Polygon(corners, 66.68687061861488), 953.55, gap: 4, edge: 15, rows: rows));
        Assert.InRange(YieldAccount.Of(layout).UtilisationPercent, 70, 90);
    }

    [Fact]
    public void Tiles_fill_a_wide_strip_up_to_its_two_ragged_sides()
    {
        Outline plus = Outline.From(Tiles.Named("plus").Part.Points.Select(p => p * 20)).Centred();
        double found = YieldAccount.Of(Shapes.Lay(Shapes.Request(plus, 2000))).UtilisationPercent;
        Assert.InRange(found, 96, 100);
    }
}
