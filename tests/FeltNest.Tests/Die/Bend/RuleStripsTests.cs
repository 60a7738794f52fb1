using FeltNest.Die;
using FeltNest.Die.Bend;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Die.Make;
using Xunit;

namespace FeltNest.Tests.Die.Bend;

public sealed class RuleStripsTests
{
    // M. P. Groover's worked bend: 60 degrees, inside radius 4.75 mm, 3.2 mm thick, so below twice the thickness, K 0.33: allowance 6.08;
    // with legs of 38 and 25 mm the blank is 69.08. Figures from memory, worked out again by hand: pi/3 x (4.75 + 0.33 x 3.2) = 6.0800.
    [Fact]
    public void Groovers_bend_takes_6_08_mm()
    {
        RuleBend bend = Bend(3.2, 60, 4.75);

        Assert.Equal(6.080, bend.ToMm - bend.FromMm, 5e-4);
        Assert.Equal(69.08, 38 + 25 + bend.ToMm - bend.FromMm, 5e-3);
    }

    // pi/2 x (6 + K x 0.71) by hand for K of 0.50, 0.44 and 0.33.
    [Theory]
    [InlineData(null, 9.982)]
    [InlineData(0.44, 9.915)]
    [InlineData(0.33, 9.793)]
    public void A_bend_of_6_in_2_point_rule_is_as_long_as_its_neutral_line(double? share, double length)
    {
        RuleBend bend = Bend(0.71, 90, 6, share);

        Assert.Equal(length, bend.ToMm - bend.FromMm, 5e-4);
        Assert.Equal(6, bend.InsideRadiusMm, 1e-9);
    }

    // A full turn is pi t longer in its middle than on its inner face: 2.23 for 0.71.
    [Fact]
    public void A_ring_of_a_panel_turns_once_and_is_as_long_as_the_middle_of_its_slot()
    {
        DieDesign design = DieCases.Panels;
        RuleStrip ring = Assert.Single(design.Strips);
        double inner = ring.BlankMm - ring.Bends.Sum(b => double.DegreesToRadians(b.TurnDeg) * 0.71 / 2);

        Assert.Equal(360, ring.TurnDeg, 1e-6);
        Assert.Equal(design.RingMm(0), ring.MiddleMm, 1e-6);
        Assert.Equal(design.RingMm(0), ring.BlankMm, 1e-6);
        Assert.Equal(Math.PI * 0.71, ring.BlankMm - inner, 1e-6);
        Assert.Equal(2.23, ring.BlankMm - inner, 5e-3);
        Assert.Equal(design.Gang.Cavities.Count, ring.Count);
        Assert.Null(ring.StartMitreDeg);
        Assert.Equal(design.Places[0]!.Bridges.Count, ring.Notches.Count);
        Assert.All(ring.Notches, n => Assert.InRange(n.ToMm - n.FromMm, 5, 7));
    }

    // A plate of 40 x 20 with the body of 0.71 outside: its middle line is 40.71 x 20.71, four mitred pieces, two of each length.
    [Fact]
    public void A_plate_is_four_mitred_pieces()
    {
        DieDesign design =
            DieDesigner.Run(new GangRequest(DieCases.Plates, 0, DieCases.Order, null, null), TestContext.Current.CancellationToken);

        Assert.Equal([20.71, 20.71, 40.71, 40.71], design.Strips.Select(s => Math.Round(s.BlankMm, 6)).Order());
        Assert.All(design.Strips, s =>
        {
            Assert.Empty(s.Bends);
            Assert.Equal(45, s.StartMitreDeg!.Value, 1e-9);
            Assert.Equal(45, s.EndMitreDeg!.Value, 1e-9);
        });
        Assert.Equal(2 * 122.84, design.Strips.Sum(s => s.Count * s.MiddleMm), 1e-9);
        Assert.Equal(2 * 6.0, design.Strips.SelectMany(s => s.Notches).Sum(n => n.ToMm - n.FromMm), 1e-6);
    }

    // A corner that points into the panel is mitred the other way and shortens the body outside: the slit's 30 mm sides run from a corner
    // of the plate to one of the bottom, where they gain and lose 0.355.
    [Fact]
    public void Inward_corners_are_mitred_the_other_way()
    {
        DieDesign design = NarrowPlacesTests.Design(NarrowPlacesTests.Slit(3), RuleBevel.SideWaste);

        Assert.Equal(
            2, design.Strips.Count(s => s is { StartMitreDeg: > 0, EndMitreDeg: < 0 } or { StartMitreDeg: < 0, EndMitreDeg: > 0 }));
        Assert.Equal(3 - 0.71, design.Strips.Single(s => s is { StartMitreDeg: < 0, EndMitreDeg: < 0 }).BlankMm, 1e-9);
    }

    [Fact]
    public void Springback_that_nobody_tested_is_unknown() => Assert.All(DieCases.Panels.Strips[0].Bends, b => Assert.Null(b.Setting));

    // A quarter ring of so much inside radius at the corners of a plate of 60 x 40.
    private static RuleBend Bend(double thick, double deg, double inside, double? share = null)
    {
        // An arc of the angle wanted, tangent to two legs, closed by a far corner.
        double r = inside;
        double turn = double.DegreesToRadians(deg);
        Point2 a = new(0, 0);
        Point2 start = a + new Point2(38, 0);
        Point2 end = start + new Point2(r * Math.Sin(turn), r * (1 - Math.Cos(turn)));
        Point2 last = end + (new Point2(Math.Cos(turn), Math.Sin(turn)) * 25);
        LayoutPart part = DieCases.Plates.Parts[0] with
        {
            Arcs = ArcOutline.From([
                new(0, 0, 0), new(start.X, start.Y, turn), new(end.X, end.Y, 0), new(last.X, last.Y, 0), new(0, 40, 0),
            ]),
        };
        part = part with { Outline = part.Arcs.ContainingPolygon(1e-3) };
        RollLayout layout = DieCases.Of(80, new PlacedPanel { Part = 0, XMm = 10, YMm = 17, AngleDeg = 0 }) with { Parts = [part] };
        DieOrder order = DieCases.Order with
        {
            Rule = DieCases.Order.Rule with { ThicknessMm = thick, Bevel = RuleBevel.SideWaste, NeutralShare = share, StockMm = null },
        };
        DieDesign design = DieDesigner.Run(new GangRequest(layout, 0, order, null, null), TestContext.Current.CancellationToken);
        return design.Strips.SelectMany(s => s.Bends).Single();
    }
}
