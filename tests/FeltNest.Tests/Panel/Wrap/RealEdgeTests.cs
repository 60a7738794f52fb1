using FeltNest.Ball;
using FeltNest.Files;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Wrap;
using FeltNest.Panel.Wrap.Edge;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Panel.Wrap;

/// <summary>Real outlines have noise, few points, or arcs that do not meet: they are smoothed by a stated amount, laid and drawn.</summary>
public sealed class RealEdgeTests
{
    private static readonly Lazy<FlatPanel> Own = new(() => PanelFlattener.Flatten(Balls.Usual()));

    [Fact]
    public void A_panel_of_240_points_with_noise_is_drawn_to_the_seam_and_keeps_its_strains()
    {
        Random noise = new(7);
        PieceResult laid = PieceWrap.Lay(Balls.Usual(), Points(240, () => 0.05 * Normal(noise)), null);

        Assert.InRange(laid.Smoothing!.RmsMm, 0.04, 0.06);
        Assert.Equal("mirrors", laid.Smoothing.KeptBy);
        IsTheUsualPanel(laid, 0.7);
    }

    [Fact]
    public void Forty_eight_exact_points_are_enough()
    {
        PieceResult laid = PieceWrap.Lay(Balls.Usual(), Points(48, () => 0), null);

        Assert.InRange(laid.Smoothing!.RmsMm, 0, 0.02);
        IsTheUsualPanel(laid, 0.5);
    }

    [Fact]
    public void The_shipped_tracing_is_drawn_to_the_seam()
    {
        BallSpec ball = PartReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball!.Ball;
        ImportedOutline traced = OutlineReader.Read(RepositoryFile.PathOf("shapes", "outlines", "traced-panel.dxf"));

        PieceResult laid = PieceWrap.Lay(ball, traced.Curve, null);

        Assert.NotNull(laid.EdgeHeld);
        Assert.InRange(laid.Smoothing!.RmsMm, 0.01, 0.15);
    }

    [Fact, Trait("tier", "long")]
    public void An_edge_that_is_really_uneven_is_not_smoothed_into_an_even_one()
    {
        // Half a millimetre on one tip alone is ten times the noise.
        Random noise = new(3);
        ArcOutline points = Points(240, () => 0.05 * Normal(noise));
        ArcOutline uneven = ArcOutline.From(points.Vertices.Select(v => v with { X = v.X > 0 ? v.X * 1.007 : v.X }));

        PieceResult laid = PieceWrap.Lay(Balls.Usual(), uneven, null);

        Assert.Equal("nothing", laid.Smoothing!.KeptBy);
        Assert.InRange(laid.Smoothing.RmsMm, 0.035, 0.06);
        Assert.NotNull(laid.EdgeHeld);
    }

    [Fact]
    public void Corners_that_are_meant_are_laid_as_drawn()
    {
        ArcOutline bowTie = OutlineReader.Read(RepositoryFile.PathOf("shapes", "outlines", "bow-tie.csv")).Curve;

        Assert.Null(EdgeSmoother.Smoothed(bowTie));
    }

    [Theory, Trait("tier", "long")]
    [InlineData(0.4, 0)]
    [InlineData(0, 3)]
    [InlineData(0.4, 3)]
    public void A_panel_and_its_own_cut_outline_lie_alike(double seamGap, double shrink)
    {
        BallSpec ball = Balls.Usual();
        ball = ball with
        {
            Seam = ball.Seam with { SeamGapMm = seamGap },
            Felt = ball.Felt with { CureShrinkWarpPercent = shrink, CureShrinkWeftPercent = shrink },
        };
        FlatPanel panel = PanelFlattener.Flatten(ball);

        PieceResult file = PieceWrap.Lay(ball, panel.Arcs, panel.EdgeMap);
        PieceResult outline = PieceWrap.Lay(
            ball, ArcOutline.From(panel.Outline.Points.Select(p => new ArcVertex(p.X, p.Y, 0))), null);

        Alike(file.AsCut, outline.AsCut);
        Alike(file.AfterCure, outline.AfterCure);
        Assert.Equal(file.EdgeHeld!.MaxStretchPercent, outline.EdgeHeld!.MaxStretchPercent, 0.6);

        // The cure pulls the edges back: what overlaps by 3 % of half a panel's size at fitting closes to the gap designed.
        FlatPanel closed = PanelFlattener.Flatten(ball with { Felt = Balls.Usual().Felt, Seam = ball.Seam with { SeamGapMm = 0 } });
        double free = PanelWrap.LayFree(WrapRequest.For(ball, closed.EdgeMap)).LargestGapMm!.Value;
        Assert.Equal(free + seamGap, file.AfterCure.LargestGapMm!.Value, 0.03);
        Assert.Equal(shrink > 0, file.AsCut.LargestOverlapMm > 2);
    }

    [Fact]
    public void What_the_fitter_feels_is_told_as_cut_and_after_the_cure()
    {
        BallSpec ball = Balls.Usual();
        ball = ball with
        {
            Seam = ball.Seam with { SeamGapMm = 0.4 },
            Felt = ball.Felt with { CureShrinkWarpPercent = 3, CureShrinkWeftPercent = 3 },
        };
        FlatPanel panel = PanelFit.Felt(ball, PanelFlattener.Flatten(ball));
        PieceResult laid = PieceWrap.Lay(ball, panel.Arcs, null);

        Assert.Equal(laid.AsCut.LargestOverlapMm!.Value, panel.Fit!.AsCut.LargestOverlapMm!.Value, 0.02);
        Assert.Equal(laid.AfterCure.LargestGapMm!.Value, panel.Fit.AfterCure.LargestGapMm!.Value, 0.02);
        Assert.Equal(panel.Fit.LargestGapMm!.Value + 0.4, panel.Fit.AfterCure.LargestGapMm.Value, 0.03);
    }

    private static void Alike(EdgeFreeWrap one, EdgeFreeWrap other)
    {
        Assert.Equal(one.LargestGapMm!.Value, other.LargestGapMm!.Value, 0.03);
        Assert.Equal(one.LargestOverlapMm!.Value, other.LargestOverlapMm!.Value, 0.03);
    }

    // The panel's own strains, within what its noise leaves, and the gap that its edge map leaves.
    private static void IsTheUsualPanel(PieceResult laid, double percent)
    {
        Assert.NotNull(laid.EdgeHeld);
        Assert.Equal(Own.Value.Strain.MaxStretchPercent, laid.EdgeHeld.MaxStretchPercent, percent);
        PieceResult exact = PieceWrap.Lay(Balls.Usual(), Own.Value.Arcs, null);
        Assert.Equal(exact.AsCut.LargestGapMm!.Value, laid.AsCut.LargestGapMm!.Value, 0.05);
    }

    // Points of the panel's cut edge at equal steps of its map, each off it by noise in both directions.
    private static ArcOutline Points(int count, Func<double> noise)
    {
        FeltNest.Panel.Wrap.Solve.ArcLengthCurve curve = new(Own.Value.Arcs);
        return ArcOutline.From(Enumerable.Range(0, count).Select(i => curve.At(i * curve.Period / count).Place)
            .Select(p => new ArcVertex(p.X + noise(), p.Y + noise(), 0)));
    }

    // Box and Muller's normal deviate (G. E. P. Box, M. E. Muller, Annals of Mathematical Statistics 29, 1958).
    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
