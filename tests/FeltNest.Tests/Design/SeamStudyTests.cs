using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Files.Balls;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Seam;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Design;

public sealed class SeamStudyTests
{
    private static readonly BallSpec Ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;

    [Fact]
    public void All_families_are_compared_at_the_waist_of_the_ball()
    {
        // Waist of 60 degrees: lengths and greatest curvatures of the three seams from closed forms and a shooting solution (own
        // derivation), sphere radius 1.
        (SeamFamily, double Length, double Curvature)[] known =
            [
                (SeamFamily.TwoHarmonic, 10.1668764191, 1.34715062811),
                (SeamFamily.FourArc, 10.4501849194, 1 / Math.Tan(46.5505244739 * Math.PI / 180)),
                (SeamFamily.Elastica, 10.21410904, 1.23601056),
            ];
        double radius = Ball.FittedRadiusMm;
        BallSpec ball = Ball with { Seam = Ball.Seam with { WaistMm = radius * Math.PI / 3 } };

        SeamComparison comparison = SeamStudy.Run(ball, Lay, stop: TestContext.Current.CancellationToken);

        Assert.Equal(known.Select(k => k.Item1), comparison.Entries.Select(e => e.Ball.Seam.Curve));
        Assert.All(comparison.Entries, (e, i) =>
        {
            Assert.Equal(radius * known[i].Length, e.Panel.Sphere.SeamLengthMm, 1e-5);
            Assert.Equal(radius / known[i].Curvature, e.Panel.Sphere.LeastRadiusMm, 1e-4);
            Assert.True(e.Yield.PerThousandBalls.SquareMetres > 2000 * e.Panel.AreaMm2 / 1e6);
        });
        Assert.False(comparison.CutShort);
    }

    [Fact]
    public void A_seam_given_as_points_is_compared_with_the_families_at_its_own_waist()
    {
        // Points of the two-harmonic seam: its entry and that of the family have to agree.
        TwoHarmonicSeam seam = TwoHarmonicSeam.ForWaist(0.9);
        SeamPoint[] points =
        [
            .. Enumerable.Range(0, 240).Select(i => seam.At(i * Math.PI / 120).Point).Select(p => new SeamPoint(p.X, p.Y, p.Z)),
        ];
        BallSpec ball = Ball with { Seam = new SeamSpec { Curve = SeamFamily.Points, WaistMm = 0, SeamGapMm = 0.4, Points = points } };

        SeamComparison comparison = SeamStudy.Run(ball, Lay, stop: TestContext.Current.CancellationToken);

        Assert.Equal(0.9 * ball.FittedRadiusMm, comparison.WaistMm, 1e-3);
        Assert.Equal(
            [SeamFamily.TwoHarmonic, SeamFamily.FourArc, SeamFamily.Elastica, SeamFamily.Points],
            comparison.Entries.Select(e => e.Ball.Seam.Curve));
        Assert.Equal(comparison.Entries[0].Panel.AreaMm2, comparison.Entries[3].Panel.AreaMm2, 0.5);
    }

    [Fact]
    public void A_comparison_that_is_stopped_keeps_the_seams_that_were_done()
    {
        using CancellationTokenSource stop = new();

        SeamComparison comparison = SeamStudy.Run(Ball, Lay, new AfterFirst(stop.Cancel), stop.Token);

        Assert.Equal(SeamFamily.TwoHarmonic, Assert.Single(comparison.Entries).Ball.Seam.Curve);
        Assert.True(comparison.CutShort);
    }

    [Fact]
    public void Seams_that_do_not_fit_the_roll_are_an_error_when_none_does() =>
        Assert.Throws<NoAnswerException>(() =>
            SeamStudy.Run(Ball, part => Lay(part) with { RollWidthMm = 60 }, stop: TestContext.Current.CancellationToken));

    private static LayoutRequest Lay(LayoutPart part) => new()
    {
        Part = part,
        RollWidthMm = 400,
        Trims = EdgeTrims.Both(15),
        GapMm = 4,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Effort = 1,
        Seed = 1,
    };

    private sealed class AfterFirst(Action then) : IProgress<SeamEntry>
    {
        public void Report(SeamEntry value) => then();
    }
}
