using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Check;

/// <summary>Layouts that break one promise each must be caught, and the same layouts unbroken must pass.</summary>
public sealed class LayoutCheckTests
{
    private static readonly Outline Square = Outline.From([new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)]);

    [Fact]
    public void Squares_side_by_side_pass_with_a_gap_and_without()
    {
        Assert.Empty(Verify(Lay(24, 4)).Violations);
        Assert.Equal(4, Verify(Lay(24, 4)).LeastGapMm!.Value, 1e-9);
        Assert.Empty(Verify(Lay(20, 0)).Violations);
    }

    [Theory]
    [InlineData(23.9, 4)]
    [InlineData(24 - 2e-4, 4)]
    [InlineData(20 - 2e-4, 0)]
    [InlineData(10, 0)]
    public void Squares_too_near_to_their_copies_are_caught(double length, double gap) =>
        Assert.NotEmpty(Verify(Lay(length, gap)).Violations);

    [Fact]
    public void A_part_inside_another_is_caught_at_gap_0()
    {
        RollLayout layout =
            Lay(30, 0) with { Parts = [Part(Square), Part(Outline.From([new(-1, -1), new(1, -1), new(1, 1), new(-1, 1)]))] };
        layout = With(
            layout, new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
            new PlacedPanel { Part = 1, XMm = 0, YMm = 20, AngleDeg = 0 });
        Assert.NotEmpty(Verify(layout).Violations);
    }

    [Fact]
    public void Panels_written_far_along_the_roll_meet_their_neighbours_all_the_same()
    {
        RollLayout layout = With(
            Lay(50, 4), new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
            new PlacedPanel { Part = 0, XMm = 1000 + 22, YMm = 20, AngleDeg = 0 });
        Assert.NotEmpty(Verify(layout).Violations);
    }

    [Theory]
    [InlineData(14.9)]
    [InlineData(25.1)]
    public void A_panel_over_the_edge_trim_is_caught(double y) =>
        Assert.NotEmpty(Verify(With(Lay(24, 4), new PlacedPanel { Part = 0, XMm = 0, YMm = y, AngleDeg = 0 })).Violations);

    [Fact]
    public void A_panel_off_the_warp_angle_is_caught()
    {
        LayoutRules rules = new(0, 2, RowRule.Any, false);
        Assert.Empty(Verify(With(Lay(40, 4, rules), new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 181.9 })).Violations);
        Assert.NotEmpty(Verify(With(Lay(40, 4, rules), new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 2.1 })).Violations);
    }

    [Fact]
    public void A_half_turn_in_a_one_way_lay_is_caught()
    {
        LayoutRules rules = new(null, 0, RowRule.Any, true);
        Assert.Empty(
            Verify(
                With(
                    Lay(60, 4, rules), new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 30, YMm = 20, AngleDeg = 90 })).Violations);
        Assert.Equal(
            "one way: panels do not lie within 90 degrees of one direction",
            Assert.Single(
                Verify(
                    With(
                        Lay(60, 4, rules), new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 350 },
                        new PlacedPanel { Part = 0, XMm = 30, YMm = 20, AngleDeg = 170 })).Violations));
        Assert.Single(
            Verify(
                With(
                    Lay(90, 4, rules, 10), new PlacedPanel { Part = 0, XMm = 0, YMm = 25, AngleDeg = 100 },
                    new PlacedPanel { Part = 0, XMm = 30, YMm = 25, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 60, YMm = 25, AngleDeg = -100 })).Violations);
        Assert.Empty(
            Verify(
                With(
                    Lay(60, 4, rules with { OneWay = false }), new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 350 },
                    new PlacedPanel { Part = 0, XMm = 30, YMm = 20, AngleDeg = 170 })).Violations);
    }

    [Fact]
    public void Rows_that_break_their_rule_are_caught()
    {
        PlacedPanel[] mixed =
        [
            new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 10 },
            new PlacedPanel { Part = 0, XMm = 40, YMm = 20, AngleDeg = -10 },
        ];
        Assert.NotEmpty(Verify(With(Lay(80, 4, new LayoutRules(null, 0, RowRule.Same, false), 10), mixed)).Violations);
        Assert.Empty(Verify(With(Lay(80, 4, new LayoutRules(null, 0, RowRule.Alternate, false), 10), mixed)).Violations);
        mixed[1] = mixed[1] with { AngleDeg = 20 };
        Assert.NotEmpty(Verify(With(Lay(80, 4, new LayoutRules(null, 0, RowRule.Alternate, false), 10), mixed)).Violations);
        Assert.Empty(Verify(With(Lay(80, 4, new LayoutRules(null, 0, RowRule.Any, false), 10), mixed)).Violations);
    }

    [Fact]
    public void A_polygon_that_does_not_contain_its_arcs_is_caught()
    {
        ArcOutline disc = ArcOutline.From([new(-10, 0, Math.PI), new(10, 0, Math.PI)]);
        Assert.Empty(
            Verify(Lay(24, 4) with
            {
                Parts = [new LayoutPart
            {
                Name = "disc",
                Ball = null,
                Outline = disc.ContainingPolygon(0.01),
                Arcs = disc,
                MassPerAreaGsm = null,
                WarpAngleDeg = null,
            }]
            }).Violations);
        Outline chords = Outline.From(Enumerable.Range(0, 90).Select(i => new Point2(10, 0).Turned(Math.PI * i / 45)));
        Assert.NotEmpty(Verify(Lay(24, 4) with
        {
            Parts = [new LayoutPart
        {
            Name = "disc",
            Ball = null,
            Outline = chords,
            Arcs = disc,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        }]
        }).Violations);
        Assert.NotEmpty(
            Verify(Lay(24, 4) with
            {
                Parts = [new LayoutPart
            {
                Name = "disc",
                Ball = null,
                Outline = disc.ContainingPolygon(0.05),
                Arcs = disc,
                MassPerAreaGsm = null,
                WarpAngleDeg = null,
            }]
            }).Violations);
    }

    [Fact]
    public void Bands_nearer_than_the_gap_are_caught()
    {
        LayoutRepeat low = new(24, [new PlacedPanel { Part = 0, XMm = 0, YMm = 15, AngleDeg = 0 }]);
        LayoutRepeat high = new(25, [new PlacedPanel { Part = 0, XMm = 0, YMm = 39, AngleDeg = 0 }]);
        LayoutRepeat near = new(25, [new PlacedPanel { Part = 0, XMm = 0, YMm = 38, AngleDeg = 0 }]);
        RollLayout roll = Lay(24, 4);
        roll = roll with { RollWidthMm = 60, Rules = roll.Rules with { Bands = 2 } };
        Assert.Empty(
            Verify(
                roll with
                {
                    Bands =
                    [
                        new LayoutBand { YFromMm = 5, YToMm = 27, Repeat = low },
                        new LayoutBand { YFromMm = 27, YToMm = 55, Repeat = high },
                    ],
                }).Violations);
        Assert.NotEmpty(
            Verify(
                roll with
                {
                    Bands =
                    [
                        new LayoutBand { YFromMm = 5, YToMm = 27, Repeat = low },
                        new LayoutBand { YFromMm = 27, YToMm = 55, Repeat = near },
                    ],
                }).Violations);
    }

    private static CheckVerdict Verify(RollLayout layout) => LayoutCheck.Verify(layout);

    private static LayoutPart Part(Outline outline) => new()
    {
        Name = "part",
        Ball = null,
        Outline = outline,
        Arcs = null,
        MassPerAreaGsm = null,
        WarpAngleDeg = null,
    };

    private static RollLayout Lay(double length, double gap, LayoutRules? rules = null, double room = 0) => new()
    {
        Parts = [Part(Square)],
        RollWidthMm = 40 + room,
        Trims = EdgeTrims.Both(5),
        GapMm = gap,
        Rules = rules ?? new LayoutRules(null, 0, RowRule.Any, false),
        Bands = [new LayoutBand
        {
            YFromMm = 5,
            YToMm = 35 + room,
            Repeat = new LayoutRepeat(length, [new PlacedPanel { Part = 0, XMm = 0, YMm = 20, AngleDeg = 0 }]),
        }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };

    private static RollLayout With(RollLayout layout, params PlacedPanel[] panels) =>
        layout with { Bands = [layout.Bands[0] with { Repeat = layout.Bands[0].Repeat with { Panels = panels } }] };
}
