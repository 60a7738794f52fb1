using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Panel;
using Xunit;

namespace FeltNest.Tests.Panel;

public sealed class PanelFlattenerTests
{
    [Fact]
    public void A_usual_ball_gives_a_panel_in_its_frame()
    {
        FlatPanel panel = PanelFlattener.Flatten(Balls.Usual());

        Assert.Equal(31.75, panel.Sphere.RadiusMm, 12);
        Assert.Equal(26, panel.Sphere.WaistMm, 12);
        Assert.Equal(2 * Math.PI * 31.75 * 31.75, panel.Sphere.PanelAreaMm2, 9);
        Assert.Equal(2 * Math.PI * 31.75, panel.Sphere.WaistMm + panel.Sphere.LengthMm, 9);
        Assert.InRange(panel.ArcDeviationMm, 0, 0.01);
        Assert.InRange(panel.Arcs.Centroid.Length, 0, 1e-9);
        Assert.True(panel.LengthMm > panel.WidthMm && panel.WidthMm > panel.WaistMm);
        Assert.Equal(panel.LengthMm, panel.Arcs.Vertices.Max(v => v.X) - panel.Arcs.Vertices.Min(v => v.X), 1e-9);
        Assert.InRange(panel.Strain.EnergyNmm, 1, 100);
    }

    [Fact]
    public void The_edge_map_runs_counter_clockwise_from_the_waist_with_s()
    {
        IReadOnlyList<EdgePoint> edge = PanelFlattener.Flatten(Balls.Usual()).EdgeMap;
        int n = edge.Count;

        Assert.True(n >= 360);
        Assert.Equal(0, edge[0].S);
        Assert.Equal(0, edge[0].U, 1e-9);
        Assert.True(edge[0].V < 0);
        Assert.True(edge[n / 4].U > 0);
        Assert.Equal(0, edge[n / 4].V, 1e-9);
        double twice = 0;
        for (int i = 0; i < n; i++)
        {
            EdgePoint a = edge[i];
            EdgePoint b = edge[(i + 1) % n];
            twice += (a.U * b.V) - (a.V * b.U);
            Assert.Equal(2 * Math.PI * i / n, a.S, 1e-12);
        }

        Assert.True(twice > 0);
    }

    [Theory]
    [InlineData(FlatteningMethod.Elastic, EdgeRule.Free)]
    [InlineData(FlatteningMethod.Elastic, EdgeRule.Mated)]
    [InlineData(FlatteningMethod.Elastic, EdgeRule.True)]
    [InlineData(FlatteningMethod.Conformal, EdgeRule.Mated)]
    [InlineData(FlatteningMethod.Equidistant, EdgeRule.Mated)]
    public void The_independent_check_finds_nothing_wrong(FlatteningMethod method, EdgeRule edge)
    {
        BallSpec ball = Balls.Usual() with { Panel = new PanelSpec(method, edge, null) };
        FlatPanel panel = PanelFlattener.Flatten(ball);

        FlatPanelFindings found = FlatPanelCheck.Of(panel, PanelRequest.For(ball));

        Assert.InRange(found.OutlineInsideMm, 0, 1e-9);
        Assert.InRange(found.OutlineOutsideMm, 1e-4, 0.011);
        Assert.InRange(found.AreaDifferencePercent, 0, 0.001);
        Assert.InRange(found.HalfTurnMm, 0, 1e-9);
        Assert.InRange(found.SeamLengthDifferencePercent, 0, 0.003);
        Assert.InRange(found.SphereAreaDifferencePercent, 0, 0.01);
        Assert.InRange(found.EdgeOffSeamMm, 0, 1e-8);
        Assert.InRange(found.EnergyDifferencePercent, 0, 0.15);
        if (method == FlatteningMethod.Conformal || edge != EdgeRule.Free)
        {
            Assert.InRange(found.EdgeMismatchPercent, 0, method == FlatteningMethod.Equidistant ? 12 : 0.01);
        }
    }

    [Fact]
    public void The_check_sees_a_panel_that_is_a_hundredth_too_long()
    {
        BallSpec ball = Balls.Usual();
        FlatPanel sound = PanelFlattener.Flatten(ball);
        FlatPanel wrong = sound with
        {
            EdgeMap = [.. sound.EdgeMap.Select(p => p with { U = p.U * 1.01 })],
            Strain = sound.Strain with { EnergyNmm = sound.Strain.EnergyNmm * 1.03 },
        };

        FlatPanelFindings found = FlatPanelCheck.Of(wrong, PanelRequest.For(ball));

        Assert.InRange(found.SeamLengthDifferencePercent, 0.5, 1);
        Assert.InRange(found.EnergyDifferencePercent, 2.5, 3.5);
    }

    [Fact]
    public void Doubling_all_lengths_doubles_the_panel_and_quadruples_its_energy()
    {
        BallSpec ball = Balls.Usual();
        BallSpec doubled = ball with
        {
            Core = ball.Core with { OuterDiameterMm = 2 * ball.Core.OuterDiameterMm },
            Cement = ball.Cement with { ThicknessMm = 2 * ball.Cement.ThicknessMm },
            Felt = ball.Felt with { ThicknessMm = 2 * ball.Felt.ThicknessMm },
            Seam = ball.Seam with { WaistMm = 2 * ball.Seam.WaistMm, SeamGapMm = 2 * ball.Seam.SeamGapMm },
        };

        FlatPanel one = PanelFlattener.Flatten(ball);
        FlatPanel two = PanelFlattener.Flatten(doubled);

        Assert.Equal(2 * one.LengthMm, two.LengthMm, 1e-7);
        Assert.Equal(2 * one.WaistMm, two.WaistMm, 1e-7);
        Assert.Equal(4 * one.Strain.EnergyNmm, two.Strain.EnergyNmm, 1e-7);
        Assert.Equal(one.Strain.MaxStretchPercent, two.Strain.MaxStretchPercent, 1e-7);
    }

    [Fact]
    public void Stiffer_felt_changes_the_energy_alone()
    {
        BallSpec ball = Balls.Usual();
        BallSpec stiff = ball with { Felt = ball.Felt with { WarpModulusNPerMm = 6, WeftModulusNPerMm = 6, ShearModulusNPerMm = 6 / 2.6 } };

        FlatPanel one = PanelFlattener.Flatten(ball);
        FlatPanel two = PanelFlattener.Flatten(stiff);

        Assert.Equal(one.LengthMm, two.LengthMm, 1e-9);
        Assert.Equal(3 * one.Strain.EnergyNmm, two.Strain.EnergyNmm, 1e-9);
    }

    [Fact]
    public void The_strain_field_starts_at_the_pole_and_ends_on_the_edge()
    {
        FlatPanel panel = PanelFlattener.Flatten(Balls.Usual());
        StrainField field = panel.Field;

        Assert.Equal(field.Rings * field.Spokes, field.Samples.Count);
        Assert.All(field.Samples.Take(field.Spokes), sample => Assert.Equal(default(Point2).Length, sample.Place.Length, 1e-12));
        StrainSample tip = field.At(field.Rings - 1, field.Spokes / 4);
        Assert.Equal(panel.EdgeMap[panel.EdgeMap.Count / 4].U, tip.Place.X, 1e-9);
        Assert.All(field.Samples, sample => Assert.True(sample.MajorPercent >= sample.MinorPercent));
        Assert.True(field.Samples.Max(sample => sample.MajorPercent) <= panel.Strain.MaxStretchPercent + 1e-9);
        Assert.True(field.Samples.Min(sample => sample.MinorPercent) >= -panel.Strain.MaxCompressionPercent - 1e-9);
    }

    [Fact]
    public void The_same_ball_gives_the_same_bits()
    {
        FlatPanel one = PanelFlattener.Flatten(Balls.Usual());
        FlatPanel two = PanelFlattener.Flatten(Balls.Usual());

        Assert.Equal(one.Arcs.Vertices, two.Arcs.Vertices);
        Assert.Equal(one.Outline.Points, two.Outline.Points);
        Assert.Equal(one.EdgeMap, two.EdgeMap);
        Assert.Equal(one.Strain, two.Strain);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(80)]
    [InlineData(double.NaN)]
    public void A_waist_that_does_not_fit_the_ball_is_refused_with_what_would(double waist)
    {
        BallSpec ball = Balls.Usual();

        InputException error =
            Assert.Throws<InputException>(() => PanelFlattener.Flatten(ball with { Seam = ball.Seam with { WaistMm = waist } }));

        Assert.Equal("seam.waistMm", error.Field);
        Assert.Contains("11.09 to 49.87 mm", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shear_modulus_given_to_three_digits_is_taken_as_isotropic()
    {
        BallSpec ball = Balls.Usual();

        FlatPanel panel = PanelFlattener.Flatten(ball with { Felt = ball.Felt with { ShearModulusNPerMm = 0.769 } });

        Assert.Equal(PanelFlattener.Flatten(ball).Strain, panel.Strain);
    }
}
