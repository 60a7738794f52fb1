using FeltNest.Ball;
using FeltNest.Panel;
using Xunit;

namespace FeltNest.Tests.Panel.Shape;

public sealed class AllowanceTests
{
    [Fact]
    public void Without_gap_and_shrinkage_the_cut_edge_is_the_flat_edge()
    {
        FlatPanel panel = PanelFlattener.Flatten(With(0, 0, 0, null));

        Assert.All(panel.Allowances, a => Assert.Equal((0.0, 0.0, 0.0), (a.LengthEffectMm, a.WidthEffectMm, a.AreaEffectMm2)));
        Assert.Equal(panel.EdgeMap.Max(p => p.U) * 2, panel.LengthMm, 1e-9);
        Assert.Equal(panel.EdgeMap[0].V * -2, panel.WaistMm, 1e-9);
    }

    [Fact]
    public void The_seam_gap_takes_half_of_itself_off_every_side()
    {
        // Inset by d of a smooth simple curve: area falls by length times d less pi d^2 (J. Steiner 1840, for outward offsets; the same formula with d negative), each extent by 2 d.
        const double gap = 1.2, d = gap / 2;
        FlatPanel zero = PanelFlattener.Flatten(With(0, 0, 0, null)), closed = PanelFlattener.Flatten(With(gap, 0, 0, null));
        PanelAllowance entry = closed.Allowances[0];

        Assert.Equal(1, entry.Step);
        Assert.Equal("seam gap", entry.Name);
        Assert.Equal(-gap, entry.LengthEffectMm, 1e-9);
        Assert.Equal(-gap, entry.WidthEffectMm, 1e-9);
        Assert.Equal(zero.WaistMm - gap, closed.WaistMm, 1e-9);
        Assert.Equal(-(zero.PerimeterMm * d) + (Math.PI * d * d), entry.AreaEffectMm2, 0.01);
        Assert.Equal(zero.AreaMm2 + entry.AreaEffectMm2, closed.AreaMm2, 0.05);
        Assert.Equal(zero.EdgeMap, closed.EdgeMap);
        Assert.Equal(zero.Strain, closed.Strain);
    }

    [Fact]
    public void Even_shrinkage_scales_the_panel_at_any_angle()
    {
        FlatPanel zero = PanelFlattener.Flatten(With(0.4, 0, 0, null)), grown = PanelFlattener.Flatten(With(0.4, 3, 3, null));

        Assert.Equal(zero.LengthMm / 0.97, grown.LengthMm, 1e-9);
        Assert.Equal(zero.WidthMm / 0.97, grown.WidthMm, 1e-9);
        Assert.Equal(zero.LengthMm * ((1 / 0.97) - 1), grown.Allowances[1].LengthEffectMm, 1e-9);
    }

    [Theory]
    [InlineData(0, 1 / 0.96, 1 / 0.99)]
    [InlineData(90, 1 / 0.99, 1 / 0.96)]
    [InlineData(-90, 1 / 0.99, 1 / 0.96)]
    [InlineData(180, 1 / 0.96, 1 / 0.99)]
    public void Uneven_shrinkage_works_along_warp_and_weft(double angle, double alongU, double alongV)
    {
        FlatPanel zero = PanelFlattener.Flatten(With(0.4, 0, 0, angle)), grown = PanelFlattener.Flatten(With(0.4, 4, 1, angle));

        Assert.Equal(zero.LengthMm * alongU, grown.LengthMm, 1e-6);
        Assert.Equal(zero.WidthMm * alongV, grown.WidthMm, 1e-6);
        Assert.Equal(zero.AreaMm2 / 0.96 / 0.99, grown.AreaMm2, 0.2);
        Assert.Equal(0, grown.Arcs.Vertices.Sum(v => v.X), 1e-9);
        Assert.Contains(grown.Arcs.Vertices, v => v.X == 0);
    }

    [Fact]
    public void Askew_shrinkage_leaves_a_panel_that_keeps_only_the_half_turn()
    {
        // Warp at -a in the panel frame: a point is moved as two stretches along perpendicular axes.
        FlatPanel grown = PanelFlattener.Flatten(With(0, 4, 1, 30)), zero = PanelFlattener.Flatten(With(0, 0, 0, 30));
        double c = Math.Cos(-Math.PI / 6), s = Math.Sin(-Math.PI / 6), tip = zero.LengthMm / 2;
        double along = tip * c / 0.96, across = -tip * s / 0.99;

        // The image of the old tip lies on the new outline.
        Assert.InRange(Distance(grown, (along * c) - (across * s), (along * s) + (across * c)), 0, 0.011);
        Assert.InRange(Distance(grown, (along * c) - (across * s), -((along * s) + (across * c))), 0.1, 2);
        int n = grown.Arcs.Vertices.Count;
        Assert.Equal(-grown.Arcs.Vertices[3].Y, grown.Arcs.Vertices[3 + (n / 2)].Y);
    }

    [Fact]
    public void Uneven_shrinkage_without_an_angle_is_refused()
    {
        InputException error = Assert.Throws<InputException>(() => PanelFlattener.Flatten(With(0.4, 4, 1, null)));

        Assert.Equal("panel.warpAngleDeg", error.Field);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(60)]
    public void A_gap_that_leaves_no_edge_is_refused(double gap)
    {
        InputException error = Assert.Throws<InputException>(() => PanelFlattener.Flatten(With(gap, 0, 0, null)));

        Assert.Equal("seam.seamGapMm", error.Field);
    }

    private static BallSpec With(double gap, double warp, double weft, double? angle)
    {
        BallSpec ball = Balls.Usual();
        return ball with
        {
            Felt = ball.Felt with { CureShrinkWarpPercent = warp, CureShrinkWeftPercent = weft },
            Seam = ball.Seam with { SeamGapMm = gap },
            Panel = ball.Panel with { WarpAngleDeg = angle },
        };
    }

    private static double Distance(FlatPanel panel, double u, double v)
    {
        IReadOnlyList<FeltNest.Geometry.Point2> points = panel.Outline.Points;
        double least = double.PositiveInfinity;
        for (int i = 0; i < points.Count; i++)
        {
            FeltNest.Geometry.Point2 a = points[i], chord = points[(i + 1) % points.Count] - a, p = new FeltNest.Geometry.Point2(u, v) - a;
            double share = Math.Clamp(p.Dot(chord) / chord.Dot(chord), 0, 1);
            least = Math.Min(least, (p - (chord * share)).Length);
        }

        return least;
    }
}
