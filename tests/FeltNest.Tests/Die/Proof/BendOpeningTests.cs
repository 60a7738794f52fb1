using FeltNest.Die.Proof;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Die.Proof;

/// <summary>Bends that sprang open by a known share.</summary>
public sealed class BendOpeningTests
{
    private const double Span = 200 * Math.PI / 180;
    private const double Inner = 20;

    // A band bent round the origin: outer half circle, two ends, and an inner arc that turns the other way.
    private static readonly Outline Band = Outline.From(
    [
        .. Arc(default, 40, -Span / 2, Span / 2, 400), .. Arc(End(1), 10, Span / 2, (Span / 2) + Math.PI, 200)[1..],
        .. Arc(default, Inner, Span / 2, -Span / 2, 400)[1..],
        .. Arc(End(-1), 10, (-Span / 2) + Math.PI, (-Span / 2) + (2 * Math.PI), 200)[1..^1],
    ]);

    // A strip of the same length that lost a share of its turn is an arc of a greater radius. It is laid so that the middles meet, and its
    // distances are those of circles.
    [Theory]
    [InlineData(0.02)]
    [InlineData(-0.01)]
    [InlineData(0)]
    public void The_inner_arc_tells_by_how_much_it_opened(double share)
    {
        double radius = Inner / (1 - share);
        Point2 middle = new(Inner - radius, 0);
        OutlineFeet feet = new(Band);
        (double Along, double Off)[] points =
        [
            .. Arc(middle, radius, -Span / 2 * (1 - share) * 0.99, Span / 2 * (1 - share) * 0.99, 80).Select(p => feet.Foot(p))
                .Select(foot => (foot.Along, foot.Signed)),
        ];

        OpenedBend bend = Assert.Single(BendOpening.Of(Band, points));

        Assert.Equal(-200, bend.WantedDeg, 1.0);
        Assert.Equal(share, bend.OpenedShare, 0.0007);
        Assert.Equal(0, (bend.Place - new Point2(Inner, 0)).Length, 0.5);
    }

    [Fact]
    public void Too_few_points_tell_nothing()
    {
        OutlineFeet feet = new(Band);

        Assert.Empty(BendOpening.Of(Band, [.. Arc(default, Inner, -1, 1, 6).Select(p => feet.Foot(p)).Select(f => (f.Along, f.Signed))]));
    }

    [Fact]
    public void The_angle_to_set_gives_the_one_wanted_after_the_same_loss()
    {
        OpenedBend bend = new() { Number = 1, Place = default, WantedDeg = 90, OpenedShare = 0.1, ErrorShare = 0.001 };

        Assert.Equal(90, bend.SetDeg * (1 - bend.OpenedShare), 1e-12);
        Assert.Equal(90, (bend with { ErrorShare = 0.06 }).SetDeg);
    }

    private static Point2 End(int side) => new Point2(30, 0).Turned(side * Span / 2);

    private static Point2[] Arc(Point2 centre, double radius, double from, double to, int parts) =>
        [.. Enumerable.Range(0, parts + 1).Select(i => centre + new Point2(radius, 0).Turned(from + ((to - from) * i / parts)))];
}
