using FeltNest.Die;
using FeltNest.Die.Effort;
using FeltNest.Die.Gang;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Die.SharedRule;
using FeltNest.Geometry;
using FeltNest.Layout;
using Xunit;

namespace FeltNest.Tests.Die.Make;

/// <summary>The rule of one cavity beside itself: widths by plain geometry of plates with a slit or a neck.</summary>
public sealed class NarrowPlacesTests
{
    // A body of 0.71 to the waste at either side of a slit of 1: 1.42 is wanted, and the middle lines would stand 0.29 apart.
    [Fact]
    public void A_slit_narrower_than_two_bodies_is_refused_with_its_width_and_place()
    {
        NoAnswerException told = Assert.Throws<NoAnswerException>(() => Design(Slit(1), RuleBevel.SideWaste));

        Assert.Contains("a slit of 1.00 mm near (0.0, ", told.Message);
        Assert.Contains("must hold two bodies of together 1.42 mm", told.Message);
    }

    // The same slit with the bodies in the panel has room; a neck of 1 then has none, and has with the bodies in the waste.
    [Fact]
    public void The_side_of_the_body_decides_whether_slit_or_neck_has_room()
    {
        Assert.Contains(Design(Slit(1), RuleBevel.SidePanel).Narrow, n => !n.InPanel && Math.Abs(n.WidthMm - 1) < 1e-6);
        Assert.Contains("a neck of 1.00 mm", Assert.Throws<NoAnswerException>(() => Design(Neck(1), RuleBevel.SidePanel)).Message);
        Assert.Contains(Design(Neck(1), RuleBevel.SideWaste).Narrow, n => n.InPanel && Math.Abs(n.WidthMm - 1) < 1e-6);
    }

    // 3 less two bodies of 0.71 leaves 1.58 of the 2.4 wanted: listed once, not from both its edges; a slit of 3.9 is none.
    [Fact]
    public void A_slit_without_room_for_ejection_is_listed_once()
    {
        DieDesign design = Design(Slit(3), RuleBevel.SideWaste);
        NarrowPlace slit = Assert.Single(design.Narrow);

        Assert.Equal(3, slit.WidthMm, 1e-6);
        Assert.Equal(30, slit.LengthMm, 1.0);
        Assert.Equal(0, slit.Place.X, 1e-6);
        Assert.Single(design.Notes, n => n.Text.StartsWith("slit of 3.00 mm near (0.0, ") && n.Text.Contains("leaves 1.58 mm"));
        Assert.Empty(Design(Slit(3.9), RuleBevel.SideWaste).Narrow);
    }

    // Two sides of 30 mm stand 3 mm apart: half of one is 15 mm more, as between two cavities. The law's own page: parallel rules a quarter
    // of an inch apart or less add half of the shorter. The edge is looked at in steps of 2 mm, four ends of half a step.
    [Fact]
    public void A_slit_adds_force_as_two_cavities_do()
    {
        DieCavity[] one = [new(1, new PlacedPanel { Part = 0, XMm = 0, YMm = 0, AngleDeg = 0 })];
        double Added(RollLayout lay) => CloseRules.LengthMm(lay.Parts, one, CommonCuts.None, 6.35, new DieWork(default)) / 4;

        Assert.Equal(15, Added(Slit(3)), 1.5);
        Assert.Equal(0, Added(Slit(7)), 1e-9);
        Assert.Equal(0, Added(DieCases.Plates), 1e-9);
    }

    // Behind a mouth of 1.5 mm, which two bodies close, lies a room of 20 x 20: it gets ejection of its own.
    [Fact]
    public void Waste_behind_a_narrow_mouth_gets_ejection()
    {
        DieDesign design = Design(
            Lay([
                new(-30, -20), new(30, -20), new(30, 20), new(0.75, 20), new(0.75, 10), new(10, 10), new(10, -10), new(-10, -10),
                new(-10, 10), new(-0.75, 10), new(-0.75, 20), new(-30, 20),
            ]), RuleBevel.SideWaste);
        PlacedPanel at = design.Gang.Cavities[0].Placed;

        Assert.Contains(
            design.Ejection.Rings,
            r => r.All(p => Math.Abs(p.X - at.XMm) < 10 && Math.Abs(p.Y - at.YMm) < 10) && r.Max(p => p.X) - r.Min(p => p.X) > 15);
    }

    internal static DieDesign Design(RollLayout layout, RuleBevel bevel) => DieDesigner.Run(
        new GangRequest(
            layout, 0, DieCases.Order with { Rule = DieCases.Order.Rule with { Bevel = bevel, ThicknessMm = 0.71 } }, null, null),
        TestContext.Current.CancellationToken);

    // A plate of 60 x 40 with a slit 30 deep from its upper side, and one with its middle 20 mm cut down to a neck.
    internal static RollLayout Slit(double wide) => Lay([
        new(-30, -20), new(30, -20), new(30, 20), new(wide / 2, 20), new(wide / 2, -10), new(-wide / 2, -10), new(-wide / 2, 20),
        new(-30, 20),
    ]);

    internal static RollLayout Neck(double wide) => Lay([
        new(-30, -20), new(-10, -20), new(-10, -wide / 2), new(10, -wide / 2), new(10, -20), new(30, -20), new(30, 20), new(10, 20),
        new(10, wide / 2), new(-10, wide / 2), new(-10, 20), new(-30, 20),
    ]);

    private static RollLayout Lay(Point2[] corners) => DieCases.Of(70, new PlacedPanel { Part = 0, XMm = 35, YMm = 37, AngleDeg = 0 }) with
    {
        Parts = [DieCases.Plates.Parts[0] with { Outline = Outline.From(corners) }],
    };
}
