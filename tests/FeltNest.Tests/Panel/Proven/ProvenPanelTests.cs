using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Proven;
using Xunit;

namespace FeltNest.Tests.Panel.Proven;

/// <summary>Panels computed with known values, taken for measured ones: the fit has to find the values again. The arcs of a panel follow
/// its curve to 0.01 mm, which is what limits the digits.</summary>
public sealed class ProvenPanelTests
{
    [Theory, Trait("tier", "long")]
    [InlineData(0.7, 25.0, 9.0)]
    [InlineData(0.2, 30.0, 10.0)]
    [InlineData(0.5, 24.0, 0.0)]
    public void Values_with_an_edge_limit_that_acts_are_found_again(double neutralLayer, double waistMm, double limitPercent)
    {
        ArcOutline arcs = PanelFlattener.Flatten(With(neutralLayer, waistMm, limitPercent)).Arcs;

        ProvenFit fit = ProvenPanel.Fit(Balls.Usual(), arcs.Moved(new Point2(40, -7)));

        Assert.True(fit.ShowsLimit);
        Assert.InRange(fit.RmsMm, 0, 0.008);

        // The arcs are off by at most 0.01 mm, the spread is that of outlines 0.05 mm apart: a fifth of it.
        Assert.Equal(0.05, fit.TellableMm);
        double[] made = [neutralLayer, waistMm, limitPercent];
        Assert.All(fit.Values, (value, i) => Assert.Equal(made[i], value.Value, 0.2 * value.Spread));
    }

    [Fact, Trait("tier", "long")]
    public void A_limit_that_acts_on_a_part_of_the_edge_is_found_within_its_spread()
    {
        // There the outline hardly shows the limit, and the panel takes it up node by node: fits a few thousandths of a millimetre apart
        // lie side by side.
        ArcOutline arcs = PanelFlattener.Flatten(With(0.2, 30, 12)).Arcs;

        ProvenFit fit = ProvenPanel.Fit(Balls.Usual(), arcs);

        Assert.InRange(fit.RmsMm, 0, 0.008);
        double[] made = [0.2, 30, 12];
        Assert.All(fit.Values, (value, i) => Assert.Equal(made[i], value.Value, value.Spread));
    }

    [Fact]
    public void Stretch_left_out_of_the_file_is_told_beside_the_neutral_layer_it_looks_like()
    {
        BallSpec pulled = With(0.5, 26, 100);
        pulled = pulled with
        {
            Felt = pulled.Felt with { ApplicationStretchWarpPercent = 3, ApplicationStretchWeftPercent = 3 },
        };

        ProvenFit fit = ProvenPanel.Fit(With(0.5, 26, 100), PanelFlattener.Flatten(pulled).Arcs, new ProvenHold { EdgeLimit = true });

        NeutralLayerDoubt doubt = Assert.IsType<NeutralLayerDoubt>(fit.Doubt);
        Assert.InRange(fit.Values[0].Value, 0.19, 0.24);
        Assert.True(doubt.IsUnlikely);
        Assert.Equal(3, doubt.StretchPercent, 0.05);
        Assert.Equal(3, doubt.Stated!.Value.Warp, 0.05);
        Assert.Contains("pulled on by 3.0 % more", DoubtWords.Unlikely(doubt), StringComparison.Ordinal);
    }

    [Fact]
    public void A_neutral_layer_above_the_middle_looks_like_shrinkage_left_out()
    {
        BallSpec ball = With(0.8, 26, 100);
        NeutralLayerDoubt doubt = NeutralLayerDoubt.Of(ball);

        // 0.3 of 3.2 mm on a radius of 32.71 mm.
        Assert.Equal(-100 * 0.96 / 32.71, doubt.StretchPercent, 9);
        Assert.Null(doubt.Stated);
        Assert.Contains("shrinks in the cure by 2.9 % more", DoubtWords.Unlikely(doubt), StringComparison.Ordinal);
        Assert.False(NeutralLayerDoubt.Of(With(0.6, 26, 100)).IsUnlikely);
    }

    [Fact]
    public void A_limit_that_does_not_act_is_said_not_to_be_shown()
    {
        FlatPanel made = PanelFlattener.Flatten(With(0.35, 27, 100));

        ProvenFit fit = ProvenPanel.Fit(Balls.Usual(), made.Arcs);

        Assert.False(fit.ShowsLimit);
        Assert.Equal(["neutral layer", "waist"], fit.Values.Select(v => v.Name));
        Assert.Equal(0.35, fit.Values[0].Value, 0.003);
        Assert.Equal(27, fit.Values[1].Value, 0.02);

        // The ball found makes the same panel again, with the limit its edge was seen to keep.
        Assert.Equal(made.Strain.EdgeMaxCompressionPercent, fit.Ball.Felt.MaxEdgeCompressionPercent, 0.05);
        Assert.Equal(made.AreaMm2, PanelFlattener.Flatten(fit.Ball).AreaMm2, 1.5);
    }

    [Fact, Trait("tier", "long")]
    public void Half_turned_and_turned_outlines_and_polygons_give_the_same_values()
    {
        FlatPanel made = PanelFlattener.Flatten(With(0.6, 26, 10));
        ArcOutline turned = ArcOutline.From(made.Outline.Points.Select(p => p.Turned(2.5)).Select(p => new ArcVertex(p.X, p.Y, 0)));

        ProvenFit fit = ProvenPanel.Fit(Balls.Usual(), turned);

        Assert.Equal(0.6, fit.Values[0].Value, 0.01);
        Assert.Equal(26, fit.Values[1].Value, 0.05);
        Assert.Equal(10, fit.Values[2].Value, 0.15);
        Assert.Equal(0, Math.IEEERemainder(fit.TurnDeg + (2.5 * 180 / Math.PI), 180), 0.01);
    }

    [Fact, Trait("tier", "long")]
    public void A_value_beyond_its_range_stops_at_the_end_and_says_so()
    {
        // A panel for a sphere half a millimetre larger than this felt reaches with its neutral layer at its outside.
        BallSpec larger = With(1, 26, 100);
        ArcOutline made =
            PanelFlattener.Flatten(larger with { Core = larger.Core with { OuterDiameterMm = larger.Core.OuterDiameterMm + 1 } }).Arcs;

        ProvenFit fit = ProvenPanel.Fit(Balls.Usual(), made);

        Assert.Equal(1, fit.Values[0].Value);
        Assert.Contains("greatest allowed", fit.Values[0].AtBound, StringComparison.Ordinal);
    }

    [Fact, Trait("tier", "long")]
    public void Spread_and_trade_foretell_what_a_change_does_to_the_outline()
    {
        FlatPanel made = PanelFlattener.Flatten(With(0.5, 26, 9));

        ProvenFit fit = ProvenPanel.Fit(Balls.Usual(), made.Arcs);

        // Moved along the direction seen least, the panel made is off by what was foretold, once it may be turned and moved.
        ProvenTrade weakest = fit.Trades[0];
        BallSpec moved = With(0.5 + weakest.Changes[0], 26 + weakest.Changes[1], 9 + weakest.Changes[2]);
        MeasuredEdge edge = new(made.Arcs);
        ProvenState there = new ProvenSearch(new ProvenModel(Balls.Usual(), 29), edge, []).Run(
            new ProvenState
            {
                Values = [moved.Felt.NeutralLayer, moved.Seam.WaistMm, moved.Felt.MaxEdgeCompressionPercent],
                Turn = 0,
                Move = default,
                Parameters = [],
                Feet = [],
                Outward = [],
                Off = [],
            })!;
        Assert.Equal(fit.TellableMm, there.Rms, 0.1 * fit.TellableMm);
        Assert.Contains("trade against each other", fit.Weakest, StringComparison.Ordinal);
        Assert.All(fit.Values, (value, i) => Assert.True(value.Spread >= Math.Abs(weakest.Changes[i])));
    }

    [Fact, Trait("tier", "long")]
    public void Outlines_that_are_nowhere_near_are_refused_with_the_nearest()
    {
        ArcOutline made = PanelFlattener.Flatten(Balls.Usual()).Arcs;
        ArcOutline large = ArcOutline.From(made.Vertices.Select(v => v with { X = 1.3 * v.X, Y = 1.3 * v.Y }));
        ArcOutline disc = ArcOutline.From([new(-40, 0, Math.PI), new(40, 0, Math.PI)]);

        Assert.Contains(
            "nowhere near a panel of this ball: the nearest (neutral layer 1,",
            Assert.Throws<NoAnswerException>(() => ProvenPanel.Fit(Balls.Usual(), large)).Message, StringComparison.Ordinal);
        Assert.Contains(
            "nowhere near", Assert.Throws<NoAnswerException>(() => ProvenPanel.Fit(Balls.Usual(), disc)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Balls_whose_panel_does_not_hang_on_these_values_are_refused()
    {
        ArcOutline made = PanelFlattener.Flatten(Balls.Usual()).Arcs;
        BallSpec conformal = Balls.Usual() with { Panel = new PanelSpec(FlatteningMethod.Conformal, EdgeRule.Free, null) };

        Assert.Equal("panel.flattening", Assert.Throws<InputException>(() => ProvenPanel.Fit(conformal, made)).Field);
        Assert.Equal(
            "seam.curve",
            Assert.Throws<InputException>(() =>
                ProvenPanel.Fit(
                    Balls.Usual() with { Seam = new SeamSpec { Curve = SeamFamily.Points, WaistMm = 0, SeamGapMm = 0 } }, made)).Field);
    }

    private static BallSpec With(double neutralLayer, double waistMm, double limitPercent) => Balls.Usual() with
    {
        Felt = Balls.Usual().Felt with { NeutralLayer = neutralLayer, MaxEdgeCompressionPercent = limitPercent },
        Seam = Balls.Usual().Seam with { WaistMm = waistMm },
    };

    [Fact, Trait("tier", "long")]
    public void A_panel_of_another_seam_family_is_known_by_it_and_all_are_ranked()
    {
        BallSpec fourArc = Balls.Usual() with { Seam = Balls.Usual().Seam with { Curve = SeamFamily.FourArc } };

        ProvenFit fit = ProvenFamilies.Fit(Balls.Usual(), PanelFlattener.Flatten(fourArc).Arcs, ProvenHold.Nothing);

        Assert.Equal(SeamFamily.FourArc, fit.Ball.Seam.Curve);
        Assert.Equal(SeamFamily.FourArc, fit.Families[0].Curve);
        Assert.InRange(fit.RmsMm, 0, 0.01);
        Assert.Equal(fourArc.Seam.WaistMm, fit.Ball.Seam.WaistMm, 0.05);
        Assert.Equal(fit.Families.OrderBy(family => family.RmsMm), fit.Families);
    }

    [Fact, Trait("tier", "long")]
    public void A_waist_that_is_known_is_held_and_narrows_what_is_left()
    {
        BallSpec ball = Balls.Usual();
        ArcOutline outline = PanelFlattener.Flatten(ball with { Felt = ball.Felt with { NeutralLayer = 0.6 } }).Arcs;

        ProvenFit free = ProvenPanel.Fit(ball, outline);
        ProvenFit held = ProvenPanel.Fit(ball, outline, new ProvenHold { Waist = true });

        Assert.Equal(["neutral layer"], held.Values.Select(value => value.Name));
        Assert.Equal(0.6, held.Values[0].Value, 0.005);
        Assert.Equal(ball.Seam.WaistMm, held.Ball.Seam.WaistMm);
        Assert.Equal("waist", Assert.Single(held.Held).Name);
        Assert.True(held.Values[0].Spread < free.Values[0].Spread);
    }

    [Fact]
    public void Holding_all_that_shapes_the_panel_is_refused() => Assert.Equal(
        AskedFor.HeldValues,
        Assert.Throws<InputException>(() => ProvenPanel.Fit(
            Balls.Usual(), PanelFlattener.Flatten(Balls.Usual()).Arcs, new ProvenHold { Waist = true, NeutralLayer = true })).Asked);
}
