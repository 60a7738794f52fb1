using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Geometry;
using FeltNest.Layout;
using Xunit;

namespace FeltNest.Tests.Die.Make;

public sealed class RuleTests
{
    // A plate of 40 x 20 with the body of 0.71 outside: its middle line is a plate of 40.71 x 20.71. Under a centre bevel it is the edge.
    [Theory]
    [InlineData(RuleBevel.SideWaste, 122.84)]
    [InlineData(RuleBevel.Centre, 120)]
    [InlineData(RuleBevel.SidePanel, 117.16)]
    public void The_rule_is_as_long_as_the_middle_of_its_body(RuleBevel bevel, double ring)
    {
        DieOrder order = DieCases.Order with { Rule = DieCases.Order.Rule with { Bevel = bevel, ThicknessMm = 0.71 } };
        DieDesign design = DieDesigner.Run(new GangRequest(DieCases.Plates, 0, order, null, null), TestContext.Current.CancellationToken);

        Assert.Equal(ring, design.RingMm(0), 1e-9);
        Assert.Equal(2 * ring, design.RuleLengthMm, 1e-9);
        Assert.Equal(240, design.EdgeLengthMm, 1e-9);
        Assert.Equal(240, design.Force.EdgeMm, 1e-9);
    }

    // A smooth closed line turns once round: beside it at d the line is 2 pi d longer, whatever its shape.
    [Fact]
    public void The_rule_round_a_smooth_panel_is_longer_than_its_edge_by_a_circle_of_its_offset()
    {
        DieDesign design = DieCases.Panels;
        double middle = DieCases.Order.Rule.ThicknessMm / 2;

        Assert.Equal(RuleBevel.SideWaste, DieCases.Order.Rule.Bevel);
        Assert.Equal(design.Edges[0]!.Arcs.Perimeter + (2 * Math.PI * middle), design.RingMm(0), 1e-6);
        Assert.Equal(design.Gang.Cavities.Count * design.RingMm(0), design.RuleLengthMm, 1e-6);
    }

    // Ejection of 2.4 mm (3/32 inch, a die maker's page) between two bodies: centre bevels leave half a body each in the gap, side bevels
    // to the waste a whole one. 2 point is 0.71 mm, 3 point 1.07 (rule makers' pages): 3.1 and 3.8, 3.5 and 4.5 mm.
    [Theory]
    [InlineData(0.71, RuleBevel.Centre, 3.1)]
    [InlineData(0.71, RuleBevel.SideWaste, 3.8)]
    [InlineData(1.07, RuleBevel.LongCentre, 3.5)]
    [InlineData(1.07, RuleBevel.SideWaste, 4.5)]
    [InlineData(0.71, RuleBevel.SidePanel, 2.4)]
    public void A_gap_must_hold_two_bodies_and_the_ejection(double thickness, RuleBevel bevel, double gap) =>
        Assert.Equal(gap, new DieRule
        {
            ThicknessMm = thickness,
            HeightMm = 23.8,
            Bevel = bevel,
            Hardness = "hard",
            LeastBendMm = 1.5,
        }.LeastGapMm(2.4), 0.05);

    [Theory]
    [InlineData(0.71, 2)]
    [InlineData(1.07, 3)]
    [InlineData(1.42, 4)]
    [InlineData(2.13, 6)]
    public void Rule_is_named_by_points_of_a_72nd_of_an_inch(double thickness, double points) =>
        Assert.Equal(points, new DieRule
        {
            ThicknessMm = thickness,
            HeightMm = 23.8,
            Bevel = RuleBevel.Centre,
            Hardness = "hard",
            LeastBendMm = 1.5,
        }.Points);

    [Fact]
    public void A_hollow_bend_leaves_the_rule_less_room_when_its_body_stands_in_the_waste()
    {
        DieRule rule = new()
        {
            ThicknessMm = 0.71,
            HeightMm = 23.8,
            Bevel = RuleBevel.SideWaste,
            Hardness = "hard",
            LeastBendMm = 1.5,
        };

        Assert.Equal(10, rule.InsideBendMm(10, outward: true), 1e-12);
        Assert.Equal(9.29, rule.InsideBendMm(10, outward: false), 1e-12);
    }

    [Fact]
    public void The_rule_of_a_plate_closes_at_a_mitre_and_bridges_keep_off_its_corners()
    {
        // Cut at four mitred corners anyhow, it needs no other joint; bridges keep clear of them.
        DieEdge edge = EdgeFitter.Fit(DieCases.Plates.Parts[0], TestContext.Current.CancellationToken);
        RulePlaces places = RulePlacing.Of(edge, DieCases.Order.Board);

        Assert.Equal(4, edge.Corners.Count);
        Assert.Equal(edge.Arcs.Vertices[0].Point, places.Joint);
        Assert.Equal(0, places.JointRadiusMm);
        Assert.All(
            places.Bridges,
            b => Assert.All(edge.Arcs.Vertices, v => Assert.True((v.Point - b.Place).Length >= DieCases.Order.Board.BridgeMm / 2)));
    }

    [Fact]
    public void The_joint_stands_in_the_middle_of_the_flattest_run_and_bridges_go_round()
    {
        // A long hole: 60 mm straight sides, ends of radius 10.
        ArcOutline arcs = ArcOutline.From([new(-30, -10, 0), new(30, -10, Math.PI), new(30, 10, 0), new(-30, 10, Math.PI)]);
        DieEdge edge = EdgeFitter.Fit(
            new LayoutPart
            {
                Name = "hole",
                Ball = null,
                Outline = arcs.ContainingPolygon(0.01),
                Arcs = arcs,
                MassPerAreaGsm = null,
                WarpAngleDeg = null,
            }, TestContext.Current.CancellationToken);
        RulePlaces places = RulePlacing.Of(edge, DieCases.Order.Board);

        Assert.True(double.IsPositiveInfinity(places.JointRadiusMm));
        Assert.Equal(10, Math.Abs(places.Joint.Y), 6);
        Assert.InRange(places.Joint.X, -15, 15);
        Assert.Equal((int)Math.Round(edge.Arcs.Perimeter / DieCases.Order.Board.BridgeEveryMm), places.Bridges.Count);
        Assert.All(places.Bridges, b => Assert.InRange(Math.Abs(b.Place.X), 0, 30));
    }

    [Fact]
    public void What_cannot_be_bent_held_or_struck_is_noted_with_its_numbers()
    {
        DieOrder order = DieCases.Order with { Rule = DieCases.Order.Rule with { LeastBendMm = 30 }, Plies = 2 };
        DieDesign design = DieDesigner.Run(
            new GangRequest(DieCases.PanelLay, 0, order, DieCases.Press(2000, 1000) with { DaylightMm = 25 }, null),
            TestContext.Current.CancellationToken);
        string[] notes = [.. design.Notes.Select(n => n.Text)];

        Assert.Contains(
            notes, n => n.StartsWith("radius 20.7", StringComparison.Ordinal) && n.Contains("30 is its limit", StringComparison.Ordinal));
        Assert.Contains(notes, n => n.Contains("2 x 3.2 = 6.4 mm does not go into the 5.8 mm", StringComparison.Ordinal));
        Assert.Contains(notes, n => n.Contains("30.2 mm high, the press opens 25 mm", StringComparison.Ordinal));
        Assert.Contains(notes, n => n.Contains("NOT MEASURED", StringComparison.Ordinal));
    }
}
