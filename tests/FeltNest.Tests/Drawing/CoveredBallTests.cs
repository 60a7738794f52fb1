using FeltNest.Ball;
using FeltNest.Drawing;
using FeltNest.Drawing.Parts;
using FeltNest.Drawing.Strain;
using FeltNest.Files.Balls;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Drawing;

/// <summary>The ball in parallel projection.</summary>
public sealed class CoveredBallTests
{
    private static readonly FlatPanel Panel = PanelFlattener.Flatten(Ball);
    private static readonly StrainScale Scale = StrainScale.Reaching(20);

    private static BallSpec Ball => BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;

    // The two panels cover the ball and share only the seam: what is seen of them adds to the disc, from every side.
    [Theory]
    [InlineData(0, 0, 1, 1, 0, 0)]
    [InlineData(1, 0, 0, 0, 1, 0)]
    [InlineData(1, -1, 0.6, 1, 1, 0)]
    [InlineData(0.3, 0.2, -0.9, 0.9, 0, 0.3)]
    public void The_two_panels_together_are_the_whole_disc(double x, double y, double z, double rx, double ry, double rz)
    {
        Mark[] marks = [.. Seen(new BallSide(new(x, y, z), new(rx, ry, rz)), _ => -19.9, null)];

        // One band a panel, as all strain lies in the lowest.
        double[] areas = [.. marks.OfType<PathMark>().Where(m => m.Fill == Scale.OfBand(-Scale.Bands)).Select(Area)];
        Assert.Equal(2, areas.Length);
        Assert.Equal(Math.PI * 100, areas.Sum(), 0.5);
    }

    // The half width of the waist is an arc of half the waist angle: seen on it, the seam comes as near to the middle as its sine.
    [Fact]
    public void On_a_waist_the_seam_lies_where_the_waist_says()
    {
        PathMark seam =
            Seen(OnWaist, s => s.MajorPercent, null).OfType<PathMark>().Single(m => m.Pen?.WidthMm == 0.7);
        double angle = Panel.Sphere.WaistMm / (2 * Ball.FittedRadiusMm);

        Assert.Equal(10 * Math.Sin(angle), seam.Chains.SelectMany(c => c.Vertices).Min(v => v.Point.Length), 3);
    }

    // Seen on the waist the frame of the panel's pole is that of the view; what the felt takes there turns a line that lies aslant.
    [Theory]
    [InlineData(0)]
    [InlineData(-0.5)]
    public void The_warp_passes_the_middle_of_the_waist_at_its_angle(double angle)
    {
        PathMark warp =
            Seen(OnWaist, s => s.MajorPercent, angle).OfType<PathMark>().First(m => m.Pen?.WidthMm == 0.13);
        (Point2 From, Point2 To) nearest = warp.Chains
            .SelectMany(c => c.Vertices.Zip(c.Vertices.Skip(1), (a, b) => (From: a.Point, To: b.Point)))
            .Where(piece => (piece.To - piece.From).Length > 1e-3)
            .MinBy(piece => (0.5 * (piece.From + piece.To)).Length);
        Point2 way = nearest.To - nearest.From;

        StrainSample pole = Panel.Field.At(0, 0);
        Point2 flat = new Point2(1, 0).Turned(angle - pole.MajorAngle);
        Point2 drawn =
            new Point2(flat.X * (1 + (pole.MajorPercent / 100)), flat.Y * (1 + (pole.MinorPercent / 100))).Turned(pole.MajorAngle);
        Assert.Equal(0, Math.Sin(Math.Atan2(way.Y, way.X) - Math.Atan2(drawn.Y, drawn.X)), 0.02);
    }

    private static BallSide OnWaist { get; } = new(new(0, 0, 1), new(1, 0, 0));

    private static IEnumerable<Mark> Seen(BallSide side, Func<StrainSample, double> pick, double? warpAngle) =>
        CoveredBall.Draw(new StrainMesh(Panel.Field), side, pick, Scale, warpAngle, new Point2(0, 0), 10);

    private static double Area(PathMark mark) => mark.Chains.Sum(chain => chain.Vertices
        .Zip(chain.Vertices.Skip(1).Append(chain.Vertices[0]), (a, b) => ((a.X * b.Y) - (b.X * a.Y)) / 2).Sum());
}
