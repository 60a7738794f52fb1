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
        // Inset by d of a smooth simple curve: area falls by length times d less pi d^2 (J. Steiner 1840, for outward offsets; the same
        // formula with d negative), each extent by 2 d.
        const double gap = 1.2;
        const double d = gap / 2;
        FlatPanel zero = PanelFlattener.Flatten(With(0, 0, 0, null));
        FlatPanel closed = PanelFlattener.Flatten(With(gap, 0, 0, null));
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
        FlatPanel zero = PanelFlattener.Flatten(With(0.4, 0, 0, null));
        FlatPanel grown = PanelFlattener.Flatten(With(0.4, 3, 3, null));

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
        FlatPanel zero = PanelFlattener.Flatten(With(0.4, 0, 0, angle));
        FlatPanel grown = PanelFlattener.Flatten(With(0.4, 4, 1, angle));

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
        FlatPanel grown = PanelFlattener.Flatten(With(0, 4, 1, 30));
        FlatPanel zero = PanelFlattener.Flatten(With(0, 0, 0, 30));
        double c = Math.Cos(-Math.PI / 6);
        double s = Math.Sin(-Math.PI / 6);
        double tip = zero.LengthMm / 2;
        double along = tip * c / 0.96;
        double across = -tip * s / 0.99;

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

    [Fact]
    public void Felt_that_is_pulled_on_is_cut_smaller_along_warp_and_weft()
    {
        BallSpec ball = With(0.4, 0, 0, 90);
        FlatPanel zero = PanelFlattener.Flatten(ball);
        FlatPanel pulled = PanelFlattener.Flatten(
            ball with { Felt = ball.Felt with { ApplicationStretchWarpPercent = 5, ApplicationStretchWeftPercent = 2 } });

        // At 90 degrees the warp lies across the panel.
        Assert.Equal(zero.LengthMm / 1.02, pulled.LengthMm, 1e-6);
        Assert.Equal(zero.WidthMm / 1.05, pulled.WidthMm, 1e-6);
        Assert.Equal((3, "stretch on application"), (pulled.Allowances[2].Step, pulled.Allowances[2].Name));
        Assert.Equal(pulled.WidthMm - zero.WidthMm, pulled.Allowances[2].WidthEffectMm, 1e-6);
        Assert.Equal(zero.Strain, pulled.Strain);
    }

    [Theory]
    [InlineData(0.36)]
    [InlineData(-0.5)]
    public void The_die_offset_moves_the_finished_edge_and_comes_last(double offset)
    {
        // Outwards by d of a smooth simple curve: area grows by length times d plus pi d^2, each extent by 2 d (J. Steiner 1840).
        BallSpec ball = With(0.4, 4, 1, 90);
        ball = ball with { Felt = ball.Felt with { ApplicationStretchWarpPercent = 3, ApplicationStretchWeftPercent = 1 } };
        FlatPanel zero = PanelFlattener.Flatten(ball);
        FlatPanel moved = PanelFlattener.Flatten(ball with { Panel = ball.Panel with { DieOffsetMm = offset } });
        PanelAllowance last = moved.Allowances[^1];

        Assert.Equal((4, "die offset"), (last.Step, last.Name));
        Assert.Equal(2 * offset, last.LengthEffectMm, 1e-9);
        Assert.Equal(2 * offset, last.WidthEffectMm, 1e-9);
        Assert.Equal(zero.WaistMm + (2 * offset), moved.WaistMm, 1e-9);
        Assert.Equal((zero.PerimeterMm * offset) + (Math.PI * offset * offset), last.AreaEffectMm2, 0.02);
        Assert.Equal(zero.AreaMm2 + last.AreaEffectMm2, moved.AreaMm2, 0.05);
        Assert.Equal(["seam gap", "cure shrinkage", "stretch on application", "die offset"], moved.Allowances.Select(a => a.Name));
    }

    [Fact]
    public void Askew_allowances_end_in_an_outline_with_the_tangents_of_its_curve()
    {
        // Every place of the last edge lies the offset away from the edge before it, measured to the old outline.
        BallSpec ball = With(0.4, 4, 1, 30);
        FlatPanel zero = PanelFlattener.Flatten(ball);
        FlatPanel moved = PanelFlattener.Flatten(ball with { Panel = ball.Panel with { DieOffsetMm = 0.5 } });

        Assert.All(moved.Arcs.Vertices, v => Assert.Equal(0.5, Distance(zero, v.X, v.Y), 0.02));
    }

    [Fact]
    public void A_die_that_leaves_no_edge_and_an_uneven_pull_without_an_angle_are_refused()
    {
        BallSpec ball = Balls.Usual();
        BallSpec small = ball with { Panel = ball.Panel with { DieOffsetMm = -20 } };
        BallSpec uneven = ball with { Felt = ball.Felt with { ApplicationStretchWarpPercent = 2 } };

        Assert.Equal("panel.dieOffsetMm", Assert.Throws<InputException>(() => PanelFlattener.Flatten(small)).Field);
        Assert.Equal("panel.warpAngleDeg", Assert.Throws<InputException>(() => PanelFlattener.Flatten(uneven)).Field);
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
            FeltNest.Geometry.Point2 a = points[i];
            FeltNest.Geometry.Point2 chord = points[(i + 1) % points.Count] - a;
            FeltNest.Geometry.Point2 p = new FeltNest.Geometry.Point2(u, v) - a;
            double share = Math.Clamp(p.Dot(chord) / chord.Dot(chord), 0, 1);
            least = Math.Min(least, (p - (chord * share)).Length);
        }

        return least;
    }
}
