using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Geometry;

/// <summary>Outlines of arcs by hand. Formulas of the circle, its segment and its half: any handbook of mathematics.</summary>
public sealed class ArcOutlineTests
{
    [Theory]
    [InlineData(7.0)]
    [InlineData(0.3)]
    public void A_half_disc_has_the_measures_of_the_handbook(double radius)
    {
        ArcOutline half = ArcOutline.From([new(100 + radius, 50, Math.PI), new(100 - radius, 50, 0)]);

        Assert.Equal(Math.PI * radius * radius / 2, half.Area, 1e-12 * radius * radius);
        Assert.Equal((Math.PI + 2) * radius, half.Perimeter, 1e-12 * radius);

        // The centroid stands 4 r / (3 pi) from the straight side.
        Assert.Equal(0, (half.Centroid - new Point2(100, 50 + (4 * radius / (3 * Math.PI)))).Length, 1e-12);
    }

    // Area r2 (a - sin a) / 2 and centroid 4 r sin3(a/2) / (3 (a - sin a)) of a segment, a its angle; below 0.05 a series takes over in the
    // program.
    [Theory]
    [InlineData(2.0)]
    [InlineData(0.3)]
    [InlineData(0.051)]
    [InlineData(0.049)]
    [InlineData(4.0)]
    public void A_segment_of_a_circle_has_the_measures_of_the_handbook(double angle)
    {
        const double radius = 40;
        double half = angle / 2;
        ArcOutline segment = ArcOutline.From([
            new(radius * Math.Cos(-half), radius * Math.Sin(-half), angle), new(radius * Math.Cos(half), radius * Math.Sin(half), 0),
        ]);
        double slice = angle - Math.Sin(angle);

        Assert.Equal(radius * radius * slice / 2, segment.Area, 1e-9 * segment.Area);
        Assert.Equal((radius * angle) + (2 * radius * Math.Sin(half)), segment.Perimeter, 1e-12 * radius);
        Assert.Equal(0, (segment.Centroid - new Point2(4 * radius * Math.Pow(Math.Sin(half), 3) / (3 * slice), 0)).Length, 1e-8);
    }

    // The tangents at the ends of a piece of angle a meet r (1/cos(a/2) - 1) outside; a chord lies r (1 - cos(a/2)) inside. So many pieces,
    // and none more.
    [Fact]
    public void A_polygon_round_an_arc_has_no_more_corners_than_its_tolerance_asks_for()
    {
        const double radius = 50;
        const double tolerance = 0.01;
        int outside = (int)Math.Ceiling(Math.PI / (2 * Math.Acos(radius / (radius + tolerance))));
        int inside = (int)Math.Ceiling(Math.PI / (2 * Math.Acos(1 - (tolerance / radius))));
        ArcOutline bulge = ArcOutline.From([new(radius, 0, Math.PI), new(-radius, 0, 0), new(-radius, -5, 0), new(radius, -5, 0)]);
        ArcOutline bay = ArcOutline.From([new(-radius, 0, -Math.PI), new(radius, 0, 0), new(radius, 60, 0), new(-radius, 60, 0)]);

        // One corner a piece between the ends; the ends themselves lie on straight lines with their neighbours, or are corners of the
        // plate.
        Assert.InRange(bulge.ContainingPolygon(tolerance).Points.Count, outside + 2, outside + 4);
        Assert.Throws<GeometryException>(() =>
            ArcOutline.From([new(-radius, 0, Math.PI), new(radius, 0, 0), new(radius, -5, Math.PI), new(-radius, -5, 0)])
                .ContainingPolygon(tolerance));
        Assert.Equal(inside - 1 + 4, bay.ContainingPolygon(tolerance).Points.Count);
    }

    // Two quarters of a circle that go on in one another: the joint lies on the line of its neighbours and is no corner.
    [Fact]
    public void A_joint_of_two_tangent_arcs_leaves_no_corner_and_no_gap()
    {
        ArcOutline one = ArcOutline.From([new(10, 0, Math.PI), new(-10, 0, 0)]);
        ArcOutline two = ArcOutline.From([new(10, 0, Math.PI / 2), new(0, 10, Math.PI / 2), new(-10, 0, 0)]);
        Outline plain = one.ContainingPolygon(0.01);
        Outline joined = two.ContainingPolygon(0.01);

        Assert.DoesNotContain(joined.Points, p => (p - new Point2(0, 10)).Length < 1e-6);
        Assert.InRange(joined.Points.Count - plain.Points.Count, 0, 1);
        Assert.InRange(joined.Area - two.Area, 0, 0.01 * two.Perimeter);
    }

    [Fact]
    public void A_clockwise_chain_is_turned_round_with_its_arcs_and_moves_as_a_whole()
    {
        ArcOutline forward = ArcOutline.From([new(5, 0, 1), new(0, 5, -0.5), new(-5, 0, 0)]);
        ArcOutline back = ArcOutline.From([new(5, 0, 0), new(-5, 0, 0.5), new(0, 5, -1)]);
        ArcOutline moved = forward.Moved(new Point2(3, -4));

        Assert.Equal((forward.Area, forward.Perimeter), (back.Area, back.Perimeter));
        Assert.Equal(forward.Area, moved.Area, 1e-12);
        Assert.Equal(0, (moved.Centroid - forward.Centroid - new Point2(3, -4)).Length, 1e-12);
    }

    [Fact]
    public void What_is_no_outline_is_refused_with_its_reason()
    {
        Assert.Equal("arc outline needs at least 2 vertices", Told(new ArcVertex(0, 0, 1)));
        Assert.Equal("arc outline has a number that is not finite", Told(new(0, double.NaN, 1), new(1, 0, 1)));
        Assert.Equal("arc outline has a number that is not finite", Told(new(0, 0, double.PositiveInfinity), new(1, 0, 1)));
        Assert.StartsWith("arc turns a full circle or more", Told(new(0, 0, 2 * Math.PI), new(1, 0, 1)), StringComparison.Ordinal);
        Assert.StartsWith("arc outline repeats a vertex", Told(new(0, 0, 1), new(0, 0, 1), new(1, 0, 1)), StringComparison.Ordinal);
        Assert.Equal("arc outline encloses no area", Told(new(0, 0, 0), new(1, 0, 0)));
        Assert.StartsWith(
            "outline has more than 10000 points",
            Assert.Throws<GeometryException>(() => ArcOutline.From([new(0, 0, 6.28318), new(100, 0, 0)]).ContainingPolygon(1e-3)).Message,
            StringComparison.Ordinal);
    }

    private static string Told(params ArcVertex[] vertices) => Assert.Throws<GeometryException>(() => ArcOutline.From(vertices)).Message;
}
