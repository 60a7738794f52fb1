using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Die.Check;
using FeltNest.Die.Edge;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Die.Edge;

public sealed class EdgeFitterTests
{
    private static readonly Lazy<(FlatPanel Panel, LayoutPart Part)> Cover = new(() =>
    {
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;
        FlatPanel panel = PanelFlattener.Flatten(ball);
        return (panel, CoverPart.Of(ball, panel));
    });

    private static LayoutPart Panel => Cover.Value.Part;

    [Fact]
    public void A_fit_whose_asker_is_gone_is_broken_off() =>
        Assert.Throws<OperationCanceledException>(() => EdgeFitter.Fit(Panel, new CancellationToken(canceled: true)));

    [Fact]
    public void A_panel_of_a_ball_becomes_fewer_arcs_within_two_hundredths_of_the_true_outline()
    {
        DieEdge edge = EdgeFitter.Fit(Panel, TestContext.Current.CancellationToken);
        EdgeVerdict verdict = DieEdgeCheck.Measure(Panel, edge);

        Assert.True(
            edge.Arcs.Vertices.Count <= 0.7 * Panel.Arcs!.Vertices.Count,
            $"{edge.Arcs.Vertices.Count} arcs of {Panel.Arcs.Vertices.Count}");
        Assert.InRange(verdict.OffMm, 0, 0.01);
        Assert.InRange(edge.OffLayoutMm, verdict.OffMm - 1e-4, 0.01);
        Assert.InRange(verdict.TangentBreakDeg, 0, 0.1);
        Assert.InRange(verdict.AreaShare, 0, 1e-4);
        Assert.Empty(edge.Corners);
    }

    [Fact]
    public void Both_sides_of_a_mirror_are_equal_to_the_last_digit()
    {
        DieEdge edge = EdgeFitter.Fit(Panel, TestContext.Current.CancellationToken);

        Assert.Equal(EdgeMirrors.Both, edge.Mirrors);
        HashSet<(double, double)> places = [.. edge.Arcs.Vertices.Select(v => (v.X, v.Y))];
        Assert.All(
            edge.Arcs.Vertices,
            v => Assert.True(places.Contains((-v.X, v.Y)) && places.Contains((v.X, -v.Y)) && places.Contains((-v.X, -v.Y))));
        Assert.InRange(DieEdgeCheck.Measure(Panel, edge).MirrorOffMm, 0, 1e-9);
    }

    [Theory]
    [InlineData("dog-bone.json", 4, 0)]
    [InlineData("pear.svg", 4, 0)]
    [InlineData("bow-tie.csv", 10, 10)]
    public void An_outline_that_is_arcs_and_straight_sides_already_stays_as_it_is(string name, int pieces, int corners)
    {
        LayoutPart part = Outline(name);
        DieEdge edge = EdgeFitter.Fit(part, TestContext.Current.CancellationToken);

        Assert.Equal(pieces, edge.Arcs.Vertices.Count);
        Assert.Equal(corners, edge.Corners.Count);
        EdgeVerdict verdict = DieEdgeCheck.Measure(part, edge);
        Assert.InRange(verdict.OffMm, 0, 1e-5);
        Assert.InRange(verdict.TangentBreakDeg, 0, 0.1);
    }

    // The part that is fitted begins on the mirror and may run past the corner that the drawing begins with.
    [Fact]
    public void A_plate_stays_as_it_is_from_whichever_corner_and_side_it_is_drawn()
    {
        Point2[] tee = [new(-30, -8), new(10, -8), new(10, -25), new(26, -25), new(26, 25), new(10, 25), new(10, 8), new(-30, 8)];
        for (int first = 0; first < tee.Length; first++)
        {
            Point2[] drawn = [.. tee[first..], .. tee[..first]];
            foreach (Outline part in new[] { drawn, [.. drawn.Select(p => new Point2(-p.X, p.Y))], [.. drawn.Select(p => p.Left)] }
                .Select(points => FeltNest.Geometry.Outline.From(points).Centred()))
            {
                DieEdge edge = EdgeFitter.Fit(new LayoutPart
                {
                    Name = "tee",
                    Ball = null,
                    Outline = part,
                    Arcs = null,
                    MassPerAreaGsm = null,
                    WarpAngleDeg = null,
                }, TestContext.Current.CancellationToken);

                Assert.Equal((first, 8, 8), (first, edge.Arcs.Vertices.Count, edge.Corners.Count));
                Assert.All(part.Points, corner => Assert.Contains(edge.Arcs.Vertices, v => (v.Point - corner).Length < 1e-9));
            }
        }
    }

    // Forks and parts with a slit cross their mirror twice on one side of the middle of their area, and in the middle of a side.
    [Theory]
    [InlineData("fork", 0)]
    [InlineData("fork", 90)]
    [InlineData("fork", 180)]
    [InlineData("fork", 270)]
    [InlineData("cross", 0)]
    [InlineData("ring with a gap", 0)]
    [InlineData("ring with a gap", 90)]
    [InlineData("ring with a gap", 180)]
    [InlineData("slit", 0)]
    [InlineData("slit", 90)]
    [InlineData("slit", 180)]
    public void Parts_that_are_their_own_mirror_have_an_edge_equal_on_both_sides(string name, double turnDeg)
    {
        Point2[] points = name switch
        {
            "fork" => [new(0, 0), new(80, 0), new(80, 60), new(60, 60), new(60, 20), new(20, 20), new(20, 60), new(0, 60)],
            "cross" =>
            [
                new(-10, -40), new(10, -40), new(10, -10), new(40, -10), new(40, 10), new(10, 10), new(10, 40), new(-10, 40), new(-10, 10),
                new(-40, 10), new(-40, -10), new(-10, -10),
            ],
            "slit" => [new(0, 0), new(70, 0), new(70, 14.5), new(20, 14.5), new(20, 15.5), new(70, 15.5), new(70, 30), new(0, 30)],

            // Radii 40 and 28, open over 40 degrees.
            _ => [.. Enumerable.Range(0, 401)
                .Select(k => double.DegreesToRadians(20 + (k * 0.8)))
                .Select(a => new Point2(40 * Math.Cos(a), 40 * Math.Sin(a))),
                .. Enumerable.Range(0, 401)
                    .Select(k => double.DegreesToRadians(340 - (k * 0.8)))
                    .Select(a => new Point2(28 * Math.Cos(a), 28 * Math.Sin(a)))],
        };
        Outline outline = FeltNest.Geometry.Outline.From(points).Centred().Turned(double.DegreesToRadians(turnDeg));
        LayoutPart part = new()
        {
            Name = name,
            Ball = null,
            Outline = outline,
            Arcs = null,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        };
        DieEdge edge = EdgeFitter.Fit(part, TestContext.Current.CancellationToken);
        EdgeVerdict verdict = DieEdgeCheck.Measure(part, edge);

        Assert.Equal(
            name == "cross" ? EdgeMirrors.Both : (turnDeg / 90 % 2 == 0) == (name == "fork") ? EdgeMirrors.AboutY : EdgeMirrors.AboutX,
            edge.Mirrors);
        Assert.InRange(verdict.OffMm, 0, 0.02);
        Assert.InRange(verdict.MirrorOffMm, 0, 1e-9);
        Assert.InRange(verdict.TangentBreakDeg, 0, 0.1);
        Assert.InRange(verdict.AreaShare, 0, 1e-3);
        Assert.Equal(name.StartsWith("ring", StringComparison.Ordinal) ? 4 : points.Length, edge.Corners.Count);
    }

    [Fact]
    public void A_finely_traced_ellipse_becomes_a_few_arcs_without_a_corner()
    {
        // An ellipse of half axes 60 and 25 mm by 400 points: its chords leave it by up to 0.013 mm.
        Outline traced = FeltNest.Geometry.Outline.From(
            Enumerable.Range(0, 400).Select(k => new Point2(60 * Math.Cos(k * Math.PI / 200), 25 * Math.Sin(k * Math.PI / 200))));
        LayoutPart part = new()
        {
            Name = "ellipse",
            Ball = null,
            Outline = traced,
            Arcs = null,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        };
        DieEdge edge = EdgeFitter.Fit(part, TestContext.Current.CancellationToken);
        EdgeVerdict verdict = DieEdgeCheck.Measure(part, edge);

        Assert.Empty(edge.Corners);
        Assert.InRange(edge.Arcs.Vertices.Count, 8, 32);
        Assert.InRange(verdict.OffMm, 0, 0.02);
        Assert.InRange(verdict.TangentBreakDeg, 0, 0.1);
        Assert.InRange(verdict.AreaShare, 0, 2e-4);
    }

    [Theory]
    [InlineData(0, EdgeMirrors.AboutX)]
    [InlineData(90, EdgeMirrors.AboutY)]
    [InlineData(20, EdgeMirrors.None)]
    public void An_egg_keeps_its_one_mirror(double turnDeg, EdgeMirrors mirrors)
    {
        Outline egg = FeltNest.Geometry.Outline.From(Enumerable.Range(0, 720).Select(k => k * Math.PI / 360)
            .Select(t => new Point2(60 * Math.Cos(t), (25 + (8 * Math.Cos(t))) * Math.Sin(t))))
            .Centred()
            .Turned(double.DegreesToRadians(turnDeg));
        LayoutPart part = new()
        {
            Name = "egg",
            Ball = null,
            Outline = egg,
            Arcs = null,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        };
        DieEdge edge = EdgeFitter.Fit(part, TestContext.Current.CancellationToken);
        EdgeVerdict verdict = DieEdgeCheck.Measure(part, edge);

        Assert.Equal(mirrors, edge.Mirrors);
        Assert.InRange(edge.Arcs.Vertices.Count, 8, 28);
        Assert.InRange(verdict.OffMm, 0, 0.02);
        Assert.InRange(verdict.TangentBreakDeg, 0, 0.1);
        Assert.InRange(verdict.MirrorOffMm, 0, 1e-9);
    }

    [Fact, Trait("tier", "long")]
    public void A_panel_with_only_a_half_turn_is_followed_as_closely()
    {
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2-woven.json")).Ball;
        ball = ball with { Panel = ball.Panel with { WarpAngleDeg = 20 } };
        LayoutPart part = CoverPart.Of(ball, PanelFlattener.Flatten(ball));
        DieEdge edge = EdgeFitter.Fit(part, TestContext.Current.CancellationToken);
        EdgeVerdict verdict = DieEdgeCheck.Measure(part, edge);

        Assert.Equal(EdgeMirrors.None, edge.Mirrors);
        Assert.True(edge.HalfTurn);
        Assert.InRange(verdict.OffMm, 0, 0.01);
        Assert.InRange(verdict.TangentBreakDeg, 0, 0.1);
        Assert.True(edge.Arcs.Vertices.Count < part.Arcs!.Vertices.Count);
    }

    private static LayoutPart Outline(string name)
    {
        ImportedOutline outline = PartReader.Read(RepositoryFile.PathOf("shapes", "outlines", name)).Outline!;
        return new LayoutPart
        {
            Name = outline.Name,
            Ball = null,
            Outline = outline.Centred,
            Arcs = outline.CentredArcs,
            MassPerAreaGsm = null,
            WarpAngleDeg = null,
        };
    }
}
