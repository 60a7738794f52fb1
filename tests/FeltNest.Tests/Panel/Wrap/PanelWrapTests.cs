using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Wrap;
using FeltNest.Panel.Wrap.Solve;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Panel.Wrap;

public sealed class PanelWrapTests
{
    private static readonly TwoHarmonicSeam Seam = TwoHarmonicSeam.ForWaist(Math.PI / 3);
    private static readonly FeltLaw Felt = FeltLaw.Isotropic(1, 0.3);

    [Theory]
    [InlineData(1.00482392, 59.60161502, 0.0090683029, 0.85838714)]
    [InlineData(0.5, 28.93680687, 0.0001312308, 0.96768937)]
    public void A_flat_disc_keeps_the_values_of_the_radial_equation(double flatRadius, double polarDeg, double energy, double hoop)
    {
        // Values: an independent solver of the ordinary differential equation (own derivation), E = 1, t = 1, nu = 0.3, unit sphere.
        EdgeFreeWrap free = PanelWrap.Lay(new WrapRequest(1, Seam, Felt, Disc(flatRadius), null)).EdgeFree;

        Assert.Equal(energy, free.EnergyNmm, 1e-9);
        Assert.All(free.Edge, place => Assert.Equal(polarDeg, Math.Acos(place.Z) * 180 / Math.PI, 1e-5));
        Assert.Equal(hoop, Math.Sqrt((free.Edge[7].X * free.Edge[7].X) + (free.Edge[7].Y * free.Edge[7].Y)) / flatRadius, 1e-7);
    }

    [Theory]
    [InlineData(EdgeRule.Free)]
    [InlineData(EdgeRule.Mated)]
    [InlineData(EdgeRule.True)]
    public void With_its_edge_held_by_its_map_a_panel_returns_its_own_strains(EdgeRule rule)
    {
        // Strains to 1e-4, those of the edge-true panel included, which change ten times as fast near its edge.
        const double percent = 0.01;
        BallSpec ball = Balls.Usual() with { Panel = new PanelSpec(FlatteningMethod.Elastic, rule, null) };
        FlatPanel panel = PanelFlattener.Flatten(ball);

        EdgeHeldWrap held = PanelWrap.Lay(WrapRequest.For(ball, panel.EdgeMap)).EdgeHeld!;

        Assert.Equal(panel.Strain.MaxStretchPercent, held.MaxStretchPercent, percent);
        Assert.Equal(panel.Strain.MaxCompressionPercent, held.MaxCompressionPercent, percent);
        Assert.Equal(1, held.EnergyNmm / panel.Strain.EnergyNmm, 1e-4);
        Assert.InRange(held.EdgeOffSeamMm, 0, 0.005);
    }

    [Fact]
    public void Askew_felt_returns_its_own_strains_as_well()
    {
        BallSpec ball = Balls.Usual();
        ball = ball with
        {
            Felt = ball.Felt with { WarpModulusNPerMm = 2.4, WeftModulusNPerMm = 1.6, ShearModulusNPerMm = 0.6, Poisson = 0.35 },
            Panel = ball.Panel with { WarpAngleDeg = 30 },
        };
        FlatPanel panel = PanelFlattener.Flatten(ball);

        EdgeHeldWrap held = PanelWrap.Lay(WrapRequest.For(ball, panel.EdgeMap)).EdgeHeld!;

        Assert.Equal(panel.Strain.MaxStretchPercent, held.MaxStretchPercent, 0.01);
        Assert.Equal(panel.Strain.MaxCompressionPercent, held.MaxCompressionPercent, 0.01);
        Assert.Equal(1, held.EnergyNmm / panel.Strain.EnergyNmm, 1e-4);
    }

    [Fact]
    public void With_its_edge_free_an_elastic_panel_stops_short_by_tenths_of_a_millimetre()
    {
        // The panel's optimum balances the configurational, not the physical, edge force: the deficit is of second order in the strain (0.2
        // mm at each edge of a 60 degree cap on a 64 mm ball; own derivation).
        FlatPanel panel = PanelFlattener.Flatten(Balls.Usual());

        EdgeFreeWrap free = PanelWrap.Lay(WrapRequest.For(Balls.Usual(), panel.EdgeMap)).EdgeFree;

        Assert.InRange(free.LargestGapMm!.Value, 0.1, 0.8);
        Assert.InRange(free.LargestOverlapMm!.Value, 0, 0.05);
        Assert.True(free.EnergyNmm < panel.Strain.EnergyNmm);
        Assert.Equal(free.Edge.Count, free.Gaps.Count);
        Assert.All(free.Edge, place => Assert.Equal(31.75, place.Length, 1e-9));
        Assert.True(free.Edge[0].Y < 0 && free.Edge[free.Edge.Count / 4].X > 0);
    }

    [Fact]
    public void An_edge_that_may_slide_costs_no_more_than_one_held_place_by_place()
    {
        BallSpec ball = Balls.Usual() with { Seam = Balls.Usual().Seam with { SeamGapMm = 0 } };
        FlatPanel panel = PanelFlattener.Flatten(ball);

        EdgeHeldWrap held = PanelWrap.Lay(WrapRequest.For(ball, panel.EdgeMap)).EdgeHeld!;
        WrapResult arcs = PanelWrap.Lay(WrapRequest.For(ball, panel.Arcs));
        EdgeHeldWrap slid = arcs.EdgeHeld!;

        Assert.True(slid.EnergyNmm < held.EnergyNmm && arcs.EdgeFree.EnergyNmm < slid.EnergyNmm);
        Assert.InRange(slid.EdgeOffSeamMm, 0, 0.02);
        Assert.InRange(slid.EdgePullNPerMm, 1e-4, 0.5);
    }

    [Fact]
    public void An_outline_of_arcs_and_the_edge_map_of_the_same_panel_lie_alike()
    {
        // With no allowances arcs and map bound one piece to 0.01 mm. A panel made with its edge free has its least energy among all ways
        // to put its edge on the seam, so that sliding gains nothing.
        BallSpec ball = Balls.Usual() with
        {
            Seam = Balls.Usual().Seam with { SeamGapMm = 0 },
            Panel = new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Free, null),
        };
        FlatPanel panel = PanelFlattener.Flatten(ball);

        WrapResult map = PanelWrap.Lay(WrapRequest.For(ball, panel.EdgeMap));
        WrapResult arcs = PanelWrap.Lay(WrapRequest.For(ball, panel.Arcs));

        Assert.Equal(map.EdgeFree.LargestGapMm!.Value, arcs.EdgeFree.LargestGapMm!.Value, 0.02);
        Assert.Equal(1, arcs.EdgeFree.EnergyNmm / map.EdgeFree.EnergyNmm, 1e-3);
        Assert.Equal(1, arcs.EdgeHeld!.EnergyNmm / map.EdgeHeld!.EnergyNmm, 1e-3);
        Assert.Equal(map.EdgeHeld.MaxStretchPercent, arcs.EdgeHeld.MaxStretchPercent, 0.1);
    }

    [Fact]
    public void The_lay_with_the_edge_free_settles_with_the_degree()
    {
        // Lay uses degree 37 for an edge map and LayFree 29: what is left of the difference is what 29 misses.
        WrapRequest request = WrapRequest.For(Balls.Usual(), PanelFlattener.Flatten(Balls.Usual()).EdgeMap);

        EdgeFreeWrap high = PanelWrap.Lay(request).EdgeFree;
        EdgeFreeWrap low = PanelWrap.LayFree(request);

        Assert.Equal(high.LargestGapMm!.Value, low.LargestGapMm!.Value, 5e-4);
        Assert.Equal(1, low.EnergyNmm / high.EnergyNmm, 5e-6);
    }

    [Fact]
    public void An_outline_drawn_at_an_angle_is_turned_along_u_and_says_so()
    {
        FlatPanel panel = PanelFlattener.Flatten(Balls.Usual());
        ArcOutline askew = ArcOutline.From(
            panel.Arcs.Vertices.Select(v => (v.Point.Turned(1.2), v.Turn)).Select(v => new ArcVertex(v.Item1.X, v.Item1.Y, v.Turn)));
        WrapRequest plain = WrapRequest.For(Balls.Usual(), panel.Arcs);
        WrapRequest turned = WrapRequest.For(Balls.Usual(), askew);

        Assert.Equal(0, plain.TurnedDeg);
        Assert.Equal(-1.2 * 180 / Math.PI, turned.TurnedDeg, 0.05);
        Assert.Equal(PanelWrap.LayFree(plain).LargestGapMm!.Value, PanelWrap.LayFree(turned).LargestGapMm!.Value, 0.01);
        Assert.Equal(0, WrapRequest.For(Balls.Usual(), Disc(20)).TurnedDeg);
    }

    [Fact]
    public void Felt_askew_to_its_warp_is_turned_on_the_ball_until_its_edges_meet_best()
    {
        // The seam's own edge, half-turned, closes without a gap; turned by a known angle first, that turn is found.
        SpherePoint[] edge = [.. Enumerable.Range(0, 240).Select(i => Seam.At(i * Math.PI / 120).Point)];

        Assert.Equal(-0.05, SeamGap.BestTurn(EdgeFreeWrap.Turned(edge, 0.05)), 1e-4);
        Assert.All(SeamGap.Of(edge), gap => Assert.Equal(0, gap!.Value, 1e-3));

        // Askew felt with little warp is nearly the felt without one, and so is what its fitter feels.
        BallSpec ball = Balls.Usual();
        BallSpec askew = ball with
        {
            Felt = ball.Felt with { WarpModulusNPerMm = 2.1, WeftModulusNPerMm = 1.9 },
            Panel = ball.Panel with { WarpAngleDeg = 30 },
        };
        double even = PanelFit.Felt(ball, PanelFlattener.Flatten(ball)).Fit!.LargestGapMm!.Value;
        double found = PanelFit.Felt(askew, PanelFlattener.Flatten(askew)).Fit!.LargestGapMm!.Value;
        Assert.Equal(even, found, 0.15);
    }

    [Fact]
    public void A_panel_carries_what_its_fitter_feels()
    {
        FlatPanel panel = PanelFlattener.Flatten(Balls.Usual());
        FlatPanel felt = PanelFit.Felt(Balls.Usual(), panel);

        Assert.Null(panel.Fit);
        Assert.Equal(
            PanelWrap.Lay(WrapRequest.For(Balls.Usual(), panel.EdgeMap)).EdgeFree.LargestGapMm!.Value, felt.Fit!.LargestGapMm!.Value, 5e-4);
        Assert.True(felt.Fit.EnergyNmm < panel.Strain.EnergyNmm);
    }

    [Fact]
    public void Assuming_only_the_half_turn_gives_the_mirror_symmetric_lay()
    {
        FlatPanel panel = PanelFlattener.Flatten(Balls.Usual());
        WrapRequest request = WrapRequest.For(Balls.Usual(), panel.EdgeMap);

        WrapResult plain = PanelWrap.Lay(request);
        WrapResult half = PanelWrap.Lay(request with { Law = request.Law with { US = 1e-14 } });

        Assert.Equal(plain.EdgeFree.EnergyNmm, half.EdgeFree.EnergyNmm, 2e-3);
        Assert.Equal(plain.EdgeFree.LargestGapMm!.Value, half.EdgeFree.LargestGapMm!.Value, 0.01);
        Assert.Equal(1, half.EdgeHeld!.EnergyNmm / plain.EdgeHeld!.EnergyNmm, 5e-4);
    }

    [Fact]
    public void An_outline_without_any_symmetry_is_laid_from_wherever_it_lies()
    {
        // Three arcs of different reach; moving the outline moves nothing on the sphere.
        ArcOutline outline = ArcOutline.From([new(-20, -12, 0.9), new(22, -9, 1.4), new(2, 21, 1.1)]);
        WrapResult here = PanelWrap.Lay(new WrapRequest(31.75, Seam, Felt, outline, null));
        EdgeFreeWrap there = PanelWrap.Lay(new WrapRequest(31.75, Seam, Felt, outline.Moved(new Point2(300, -70)), null)).EdgeFree;

        Assert.Equal(here.EdgeFree.EnergyNmm, there.EnergyNmm, 1e-6);
        Assert.Equal(here.EdgeFree.Edge[50].X, there.Edge[50].X, 1e-6);
        Assert.Null(here.EdgeHeld);
        Assert.Contains("60 to 150 % can be drawn to the seam", here.WhyNotHeld, StringComparison.Ordinal);
    }

    [Fact]
    public void A_panel_that_is_longer_on_one_side_is_drawn_to_the_seam_as_well()
    {
        FlatPanel panel = PanelFlattener.Flatten(Balls.Usual());
        ArcOutline lopsided = ArcOutline.From(panel.Arcs.Vertices.Select(v => v with { X = v.X > 0 ? v.X * 1.01 : v.X }));

        WrapResult even = PanelWrap.Lay(WrapRequest.For(Balls.Usual(), panel.Arcs));
        WrapResult uneven = PanelWrap.Lay(WrapRequest.For(Balls.Usual(), lopsided));

        Assert.InRange(uneven.EdgeFree.EnergyNmm / even.EdgeFree.EnergyNmm, 0.9, 1.2);
        Assert.InRange(uneven.EdgeHeld!.EdgeOffSeamMm, 0, 0.0635);
        Assert.InRange(uneven.EdgeHeld.EnergyNmm / even.EdgeHeld!.EnergyNmm, 0.9, 1.3);
    }

    [Fact]
    public void Outlines_that_cannot_be_laid_are_refused_with_the_reason()
    {
        ArcOutline hook = ArcOutline.From([new(0, 0, 0), new(30, 0, 0), new(30, 30, 0), new(25, 30, 0), new(25, 3, 0), new(0, 3, 0)]);

        Assert.Contains(
            "cannot be seen from its centroid",
            Assert.Throws<NoAnswerException>(() => PanelWrap.Lay(new WrapRequest(31.75, Seam, Felt, hook, null))).Message,
            StringComparison.Ordinal);
        Assert.Contains(
            "at most 94 and 44.5 mm",
            Assert.Throws<NoAnswerException>(() => PanelWrap.Lay(new WrapRequest(31.75, Seam, Felt, Disc(60), null))).Message,
            StringComparison.Ordinal);
        Assert.Equal("outline", Assert.Throws<InputException>(() => PanelWrap.Lay(new WrapRequest(31.75, Seam, Felt, null, null))).Field);
        Assert.Equal(
            "edgeMap",
            Assert.Throws<InputException>(() =>
                PanelWrap.Lay(
                    new WrapRequest(31.75, Seam, Felt, null, [new EdgePoint { U = 1, V = 0, S = 0, StretchPercent = 0 }]))).Field);
    }

    [Fact]
    public void Two_round_caps_leave_the_zone_between_them_as_gap()
    {
        // Caps of angular radius a about opposite poles: the zone between them is pi - 2 a wide everywhere.
        foreach (double a in new[] { 1.2, 1.9 })
        {
            SpherePoint[] edge =
            [
                .. Enumerable.Range(0, 400)
                    .Select(i =>
                        new SpherePoint(Math.Sin(a) * Math.Cos(i * Math.PI / 200), Math.Sin(a) * Math.Sin(i * Math.PI / 200), Math.Cos(a))),
            ];

            Assert.All(SeamGap.Of(edge), gap => Assert.Equal(Math.PI - (2 * a), gap!.Value, 1e-4));
        }
    }

    private static ArcOutline Disc(double radius) => ArcOutline.From([new(-radius, 0, Math.PI), new(radius, 0, Math.PI)]);
}
