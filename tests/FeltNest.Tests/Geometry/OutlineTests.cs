using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Geometry;

/// <summary>Polygons by hand: measures, and what is refused.</summary>
public sealed class OutlineTests
{
    // A right triangle of 6 by 3 at (10, 20): area 9, centroid a third along each leg, perimeter 9 + the root of 45.
    private static readonly Point2[] Triangle = [new(10, 20), new(16, 20), new(10, 23)];

    [Fact]
    public void A_triangle_has_the_measures_of_the_school_book()
    {
        Outline part = Outline.From(Triangle);

        Assert.Equal((9.0, 9 + Math.Sqrt(45)), (part.Area, part.Perimeter), Near);
        Assert.Equal(0, (part.Centroid - new Point2(12, 21)).Length, 1e-12);
        Assert.Equal((10.0, 16.0, 20.0, 23.0), (part.MinX, part.MaxX, part.MinY, part.MaxY));
    }

    // Heron's triangle of 13, 14 and 15: area 84, perimeter 42; as straight arcs and turned by 30 degrees the same.
    [Fact]
    public void Herons_triangle_has_its_area_and_perimeter_however_it_is_given()
    {
        Point2[] heron = [new(1, 2), new(15, 2), new(6, 14)];
        Outline part = Outline.From(heron);
        Outline turned = part.Turned(Math.PI / 6);
        ArcOutline arcs = ArcOutline.From(heron.Select(p => new ArcVertex(p.X, p.Y, 0)));

        Assert.Equal((84.0, 42.0), (part.Area, part.Perimeter), Near);
        Assert.Equal((84.0, 42.0), (arcs.Area, arcs.Perimeter), Near);
        Assert.All(turned.Points.Zip(heron), pair => Assert.Equal(0, (pair.First - pair.Second.Turned(Math.PI / 6)).Length, 1e-12));
        Assert.Equal(0, (part.Centroid - new Point2(22 / 3.0, 6)).Length, 1e-12);
    }

    [Fact]
    public void A_part_is_centred_moved_and_turned_as_its_corners_are()
    {
        Outline centred = Outline.From(Triangle).Centred();
        Outline turned = centred.Turned(Math.PI / 2);
        Outline moved = centred.Moved(new Point2(1, -2));

        Assert.All(centred.Points.Zip(Triangle), pair => Assert.Equal(0, (pair.First - pair.Second + new Point2(12, 21)).Length, 1e-12));
        Assert.All(
            turned.Points.Zip(centred.Points),
            pair => Assert.Equal(0, (pair.First - new Point2(-pair.Second.Y, pair.Second.X)).Length, 1e-12));
        Assert.All(moved.Points.Zip(centred.Points), pair => Assert.Equal(0, (pair.First - pair.Second - new Point2(1, -2)).Length, 1e-12));
        Assert.Equal(0, (turned.Centroid - default(Point2)).Length, 1e-12);
    }

    [Fact]
    public void A_clockwise_part_is_turned_round_from_its_first_corner_and_a_closing_corner_is_dropped()
    {
        Outline part = Outline.From([Triangle[0], Triangle[2], Triangle[1], Triangle[0], Triangle[0]]);

        Assert.Equal(Triangle, part.Points);
    }

    [Fact]
    public void What_is_no_part_is_refused_with_its_reason()
    {
        Assert.Equal("outline needs at least 3 different points", Told([new(0, 0), new(1, 0)]));
        Assert.Equal("outline needs at least 3 different points", Told([new(0, 0), new(1, 0), new(0, 0)]));
        Assert.Equal("outline has a coordinate that is not a finite number", Told([new(0, double.NaN), new(1, 0), new(0, 1)]));
        Assert.Equal("outline has a coordinate that is not a finite number", Told([new(0, 0), new(double.PositiveInfinity, 0), new(0, 1)]));
        Assert.StartsWith(
            "outline crosses or touches itself", Told([new(0, 0), new(1, 1), new(1, 0), new(0, 1)]), StringComparison.Ordinal);
        Assert.StartsWith("outline crosses or touches itself", Told([new(0, 0), new(1, 0), new(2, 0)]), StringComparison.Ordinal);
        Assert.StartsWith("outline has more than 10000 points", Told(Ring(Outline.MostPoints + 1)), StringComparison.Ordinal);
        Assert.StartsWith("outline has more than 10000 points", Told(Ring(Outline.MostPoints + 5)), StringComparison.Ordinal);
        Assert.Equal(Outline.MostPoints, Outline.From([.. Ring(Outline.MostPoints), new Point2(1000, 0)]).Points.Count);
    }

    private static Point2[] Ring(int corners) =>
        [.. Enumerable.Range(0, corners).Select(i => i == 0 ? new Point2(1000, 0) : new Point2(1000, 0).Turned(2 * Math.PI * i / corners))];

    private static string Told(Point2[] corners) => Assert.Throws<GeometryException>(() => Outline.From(corners)).Message;

    private static bool Near((double, double) a, (double, double) b) =>
        Math.Abs(a.Item1 - b.Item1) < 1e-12 && Math.Abs(a.Item2 - b.Item2) < 1e-12;
}
