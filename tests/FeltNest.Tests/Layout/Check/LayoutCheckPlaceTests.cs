using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Check;

/// <summary>Where the check sees a part that is no mirror of itself: extents and distances worked out by hand.</summary>
public sealed class LayoutCheckPlaceTests
{
    // Corners (0, 0), (30, 0), (0, 10): turned by an angle a the part reaches from 0 to 30 sin a across for a from the slope's 18.4 degrees
    // to 90, and from -10 sin a to 30 cos a along.
    private static readonly Outline Wedge = Outline.From([new(0, 0), new(30, 0), new(0, 10)]);

    [Theory]
    [InlineData(30, 15)]
    [InlineData(60, 25.980762113533)]
    [InlineData(390, 15)]
    public void A_turned_part_reaches_across_as_far_as_its_corners_say(double angle, double height)
    {
        Assert.Empty(Lay(60, 20 + height, angle, 15).Violations);
        Assert.Contains("reaches from 14.999 to", Assert.Single(Lay(60, 20 + height, angle, 14.999).Violations), StringComparison.Ordinal);
        Assert.Contains(
            "panel 1: reaches from 15.001 to", Assert.Single(Lay(60, 20 + height, angle, 15.001).Violations), StringComparison.Ordinal);
    }

    // Turned by 90 degrees its long side stands at x = 0 and its tip at -10; the next copy's tip is 10 short of a repeat away, 30 short of
    // it unturned, and turned by 180 the long sides mirror that.
    [Theory]
    [InlineData(0, 34, 4)]
    [InlineData(90, 14, 4)]
    [InlineData(90, 14.5, 4.5)]
    [InlineData(180, 34, 4)]
    [InlineData(-90, 14, 4)]
    public void The_gap_to_the_next_copy_is_what_is_left_of_the_repeat(double angle, double repeat, double gap) =>
        Assert.Equal(gap, Lay(repeat, 80, angle, 40).LeastGapMm!.Value, 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(-7)]
    [InlineData(100_000)]
    public void A_panel_written_some_repeats_away_is_the_same_panel(int repeats)
    {
        CheckVerdict verdict = Verify(
            80, 50, new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
            new PlacedPanel { Part = 0, XMm = 11 + (repeats * 50.0), YMm = 35, AngleDeg = 0 });

        // The upper wedge's long side is 15 above the lower one's; the nearest places are its corner (11, 35) and the slope through (0, 30)
        // and (30, 20), the line x + 3 y = 90.
        Assert.Equal((11 + (3 * 35) - 90) / Math.Sqrt(10), verdict.LeastGapMm!.Value, 1e-9);
        Assert.Empty(verdict.Violations);
    }

    [Fact]
    public void Of_several_gaps_the_least_is_told_and_every_pair_is_counted()
    {
        // Squares of 10 in one row, 16, 17 and 19 apart on a repeat of 52: gaps 6, 7 and 9.
        Outline square = Outline.From([new(-5, -5), new(5, -5), new(5, 5), new(-5, 5)]);
        CheckVerdict verdict = LayoutCheck.Verify(
            Of(
                square, 40, 52, 5, new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
                new PlacedPanel { Part = 0, XMm = 16, YMm = 20, AngleDeg = 0 },
                new PlacedPanel { Part = 0, XMm = 33, YMm = 20, AngleDeg = 0 }));

        // Looked at are those whose boxes come within the gap and 1 mm: only the pair 16 apart.
        Assert.Equal((6, 1), (Math.Round(verdict.LeastGapMm!.Value, 9), verdict.Pairs));
        Assert.Empty(verdict.Violations);
    }

    [Theory]
    [InlineData(10, 0)]
    [InlineData(9.999, 1)]
    [InlineData(10.001, 1)]
    public void The_trims_may_differ_and_each_holds_on_its_side(double y, int violations)
    {
        // The wedge is 10 high, and so is the cloth between trims of 10 and 25 on a roll of 45.
        RollLayout layout = Of(Wedge, 45, 40, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = y, AngleDeg = 0 }) with
        {
            Trims = new() { LowerMm = 10, UpperMm = 25 },
        };
        Assert.Equal(
            violations, LayoutCheck.Verify(layout with { Bands = [layout.Bands[0] with { YFromMm = 0, YToMm = 45 }] }).Violations.Count);
    }

    [Fact]
    public void A_panel_beyond_its_band_is_caught_though_it_lies_within_the_trims()
    {
        RollLayout layout = Of(Wedge, 80, 40, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 });
        Assert.Empty(LayoutCheck.Verify(layout with { Bands = [layout.Bands[0] with { YFromMm = 20, YToMm = 30 }] }).Violations);
        Assert.Single(LayoutCheck.Verify(layout with { Bands = [layout.Bands[0] with { YFromMm = 20.001, YToMm = 60 }] }).Violations);
        Assert.Single(LayoutCheck.Verify(layout with { Bands = [layout.Bands[0] with { YFromMm = 15, YToMm = 29.999 }] }).Violations);
    }

    [Fact]
    public void The_warp_angle_has_a_sign()
    {
        LayoutRules held = new(30, 1, RowRule.Any, false);
        Assert.Empty(
            LayoutCheck.Verify(
                Of(Wedge, 80, 60, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = 40, AngleDeg = 210.5 }) with { Rules = held }).Violations);
        Assert.Contains(
            "off the warp angle 30",
            Assert.Single(
                LayoutCheck.Verify(
                    Of(Wedge, 80, 60, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = 40, AngleDeg = -30 }) with
                    {
                        Rules = held,
                    }).Violations),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Wedges_whose_boxes_cross_are_as_far_apart_as_their_slopes()
    {
        // Turned by 180 degrees and moved to (40, 33) the wedge has corners (40, 33), (10, 33), (40, 23); the slope from (10, 33) to (40,
        // 23) runs along that from (0, 30) to (30, 20), so the gap is what x + 3 y grows from 90 to 109 over sqrt 10. The boxes cross by 20
        // x 7.
        CheckVerdict verdict = Verify(
            80, 90, new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
            new PlacedPanel { Part = 0, XMm = 40, YMm = 33, AngleDeg = 180 });
        Assert.Equal(19 / Math.Sqrt(10), verdict.LeastGapMm!.Value, 1e-9);
        Assert.Empty(verdict.Violations);

        // A quarter turn is no mirror: corners (40, 22), (40, 52) and (30, 22), the last of them the nearest.
        Assert.Equal(
            (30 + (3 * 22) - 90) / Math.Sqrt(10),
            Verify(
                80, 90, new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
                new PlacedPanel { Part = 0, XMm = 40, YMm = 22, AngleDeg = 90 }).LeastGapMm!.Value,
            1e-9);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    public void A_part_inside_another_is_as_near_as_can_be(int first, int second)
    {
        // Where nothing meets but all of one part lies in the other: the specks of 2 are 8 from the edges of the square of 20.
        Outline large = Outline.From([new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)]);
        Outline speck = Outline.From([new(-1, -1), new(1, -1), new(1, 1), new(-1, 1)]);
        RollLayout layout = Of(
            large, 50, 40, 4, new PlacedPanel { Part = first, XMm = 0, YMm = 25, AngleDeg = 0 },
            new PlacedPanel { Part = second, XMm = 0.5, YMm = 25, AngleDeg = 0 });
        CheckVerdict verdict = LayoutCheck.Verify(layout with { Parts = [.. layout.Parts, layout.Parts[0] with { Outline = speck }] });
        Assert.Equal((0, 1), (verdict.LeastGapMm, verdict.Violations.Count));
    }

    [Theory]
    [InlineData(49, 0)]
    [InlineData(48.999, 1)]
    public void Bands_are_apart_by_their_outermost_panels(double y, int violations)
    {
        // The lower band's panels reach from 15 to 35, the upper one's from y - 10 up: 4 apart at 49.
        Outline square = Outline.From([new(-5, -5), new(5, -5), new(5, 5), new(-5, 5)]);
        RollLayout roll =
            Of(
                square, 120, 60, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
                new PlacedPanel { Part = 0, XMm = 20, YMm = 30, AngleDeg = 0 },
                new PlacedPanel { Part = 0, XMm = 40, YMm = 20, AngleDeg = 0 });
        LayoutBand upper = new()
        {
            YFromMm = 35,
            YToMm = 105,
            Repeat = new LayoutRepeat(
                70,
                [
                    new PlacedPanel { Part = 0, XMm = 0, YMm = y + 20, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 20, YMm = y - 5, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 40, YMm = y + 5, AngleDeg = 0 },
                ]),
        };
        RollLayout two = roll with { Rules = roll.Rules with { Bands = 2 } };
        foreach (LayoutBand[] bands in new[] { new[] { roll.Bands[0], upper }, [upper, roll.Bands[0]] })
        {
            CheckVerdict verdict = LayoutCheck.Verify(two with { Bands = bands });
            Assert.Equal(y - 10 - 35, verdict.LeastGapMm!.Value, 1e-9);
            Assert.Equal(violations, verdict.Violations.Count);
        }
    }

    [Fact]
    public void A_second_part_is_held_to_its_own_warp_angle()
    {
        RollLayout layout = Of(
            Wedge, 120, 60, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
            new PlacedPanel { Part = 1, XMm = 0, YMm = 60, AngleDeg = 50 });
        layout = layout with { Rules = layout.Rules with { WarpAngleDeg = 0 } };
        Assert.Empty(LayoutCheck.Verify(layout with { Parts = [.. layout.Parts, layout.Parts[0] with { WarpAngleDeg = 50 }] }).Violations);
        Assert.Empty(LayoutCheck.Verify(layout with { Parts = [.. layout.Parts, layout.Parts[0]] }).Violations);
        Assert.Single(LayoutCheck.Verify(layout with { Parts = [.. layout.Parts, layout.Parts[0] with { WarpAngleDeg = 49 }] }).Violations);
    }

    [Theory]
    [InlineData(RowRule.Same, 10, 190, true)]
    [InlineData(RowRule.Same, 10, -170, true)]
    [InlineData(RowRule.Same, 10, 170, false)]
    [InlineData(RowRule.Same, 10, 10.001, false)]
    [InlineData(RowRule.Alternate, 10, 170, true)]
    [InlineData(RowRule.Alternate, 370, -10, true)]
    [InlineData(RowRule.Alternate, -170, 170, true)]
    [InlineData(RowRule.Alternate, 10, 169, false)]
    public void Rows_are_told_apart_by_their_angles_but_for_half_turns(RowRule rule, double first, double second, bool kept)
    {
        RollLayout layout = Of(
            Wedge, 150, 90, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = 40, AngleDeg = first },
            new PlacedPanel { Part = 0, XMm = 0, YMm = 100, AngleDeg = second });
        IReadOnlyList<string> violations = LayoutCheck.Verify(layout with { Rules = layout.Rules with { Rows = rule } }).Violations;
        Assert.Equal(
            kept
                ? []
                :
                [
                    rule == RowRule.Same
                        ? "rows same: panels are not parallel"
                        : "rows alternate: panels lie at other angles than +a and -a",
                ], violations);
    }

    [Theory]
    [InlineData(100, -79.9, true)]
    [InlineData(100, -80, false)]
    [InlineData(100, 279.9, true)]
    [InlineData(-100, 79.9, true)]
    [InlineData(-100, 80, false)]
    public void One_way_spans_less_than_a_half_turn(double first, double second, bool kept)
    {
        RollLayout layout = Of(
            Wedge, 180, 90, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = 60, AngleDeg = first },
            new PlacedPanel { Part = 0, XMm = 0, YMm = 120, AngleDeg = second });
        Assert.Equal(kept ? 0 : 1, LayoutCheck.Verify(layout with { Rules = layout.Rules with { OneWay = true } }).Violations.Count);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 0.011)]
    [InlineData(37, 0)]
    [InlineData(37, 0.011)]
    [InlineData(-160, 0.011)]
    public void Arcs_are_followed_whatever_their_turn(double turn, double outside)
    {
        // A slot of 20 between ends of radius 10, one of its sides bent in by an arc: straight sides, round ends and a hollow, turned about
        // the origin.
        Point2 At(double x, double y) => new Point2(x, y).Turned(double.DegreesToRadians(turn));
        ArcVertex Vertex(double x, double y, double turned) => new(At(x, y).X, At(x, y).Y, turned);
        ArcOutline arcs = ArcOutline.From([Vertex(-10, -10, 0), Vertex(10, -10, Math.PI), Vertex(10, 10, -0.6), Vertex(-10, 10, Math.PI)]);
        Outline around = arcs.ContainingPolygon(0.005);
        Outline polygon = Outline.From(around.Points.Select(p => p * (1 + (outside * 20 / 400))));
        RollLayout layout = Of(polygon, 100, 100, 4, new PlacedPanel { Part = 0, XMm = 0, YMm = 50, AngleDeg = 0 });
        IReadOnlyList<string> violations = LayoutCheck.Verify(layout with { Parts = [layout.Parts[0] with { Arcs = arcs }] }).Violations;
        Assert.Equal(outside == 0 ? 0 : 1, violations.Count);
        Outline within = Outline.From(around.Points.Select(p => p * (1 - 0.002)));
        Assert.Contains(
            "its arcs leave its polygon",
            Assert.Single(LayoutCheck.Verify(layout with
            {
                Parts = [new LayoutPart
            {
                Name = "part",
                Ball = null,
                Outline = within,
                Arcs = arcs,
                MassPerAreaGsm = null,
                WarpAngleDeg = null,
            }]
            }).Violations),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Twenty_violations_are_told_at_most()
    {
        RollLayout layout = Of(
            Wedge, 80, 400, 4,
            [.. Enumerable.Range(0, 25).Select(i => new PlacedPanel { Part = 0, XMm = 16 * i, YMm = 14, AngleDeg = 0 })]);
        Assert.Equal(20, LayoutCheck.Verify(layout).Violations.Count);
    }

    private static CheckVerdict Lay(double repeat, double width, double angle, double y) =>
        Verify(width + 10, repeat, new PlacedPanel { Part = 0, XMm = 0, YMm = y, AngleDeg = angle });

    private static CheckVerdict Verify(double width, double repeat, params PlacedPanel[] panels) =>
        LayoutCheck.Verify(Of(Wedge, width, repeat, 4, panels));

    private static RollLayout Of(Outline part, double width, double repeat, double gap, params PlacedPanel[] panels) => new()
    {
        Parts = [new LayoutPart
        {
            Name = "part",
            Ball = null,
            Outline = part,
            Arcs = null,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        }],
        RollWidthMm = width,
        Trims = EdgeTrims.Both(15),
        GapMm = gap,
        Rules = new LayoutRules(null, 0, RowRule.Any, false),
        Bands = [new LayoutBand { YFromMm = 15, YToMm = width - 15, Repeat = new LayoutRepeat(repeat, panels) }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };
}
