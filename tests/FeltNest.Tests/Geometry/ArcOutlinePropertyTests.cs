using FeltNest.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using Xunit;

namespace FeltNest.Tests.Geometry;

/// <summary>Random outlines of arcs against NetTopologySuite on their sampled curve, and turned, mirrored and scaled against
/// themselves.</summary>
public sealed class ArcOutlinePropertyTests
{
    private const double Tolerance = 0.01;

    [Fact]
    public void The_containing_polygon_holds_every_place_of_the_arcs_and_strays_no_further_than_promised()
    {
        for (int seed = 0; seed < Runs.Count(60); seed++)
        {
            ArcOutline arcs = Random(seed, vertex => vertex);
            Outline polygon = arcs.ContainingPolygon(Tolerance);
            Polygon judged = new(new LinearRing([.. polygon.Points.Append(polygon.Points[0]).Select(p => new Coordinate(p.X, p.Y))]));
            IPreparedGeometry prepared = PreparedGeometryFactory.Prepare(judged.Buffer(2e-5));
            Coordinate[] curve = Curve(arcs);

            // Chords of the sampled curve lie up to a hundred-thousandth beside it, on either side.
            LineString line = new([.. curve, curve[0]]);
            Assert.True(prepared.Contains(line), $"seed {seed}: the arcs leave the polygon");
            Assert.All(
                judged.Coordinates,
                corner => Assert.True(
                    line.Distance(new Point(corner)) <= Tolerance + 2e-5,
                    $"seed {seed}: a corner is {line.Distance(new Point(corner))} outside"));
            Assert.InRange(polygon.Area - arcs.Area, -1e-7, Tolerance * arcs.Perimeter);

            // Trapezes of the sampled curve: the chords lose at most a hundred-thousandth of a mm over its length.
            Assert.Equal(new Polygon(new LinearRing([.. curve, curve[0]])).Area, arcs.Area, 1e-5 * arcs.Perimeter);
        }
    }

    [Fact]
    public void Turned_mirrored_moved_and_scaled_arcs_keep_their_measures()
    {
        for (int seed = 0; seed < Runs.Count(100); seed++)
        {
            Random random = new(seed);
            double angle = random.NextDouble() * 7;
            double size = Math.Pow(2, random.Next(-3, 6));
            double away = 1000 * random.NextDouble();
            ArcOutline plain = Random(seed, vertex => vertex);
            ArcOutline turned = Random(seed, vertex => Placed(vertex, p => p.Turned(angle) + new Point2(away, -away), 1));
            ArcOutline mirrored = Random(seed, vertex => Placed(vertex, p => new Point2(-p.X, p.Y), -1));
            ArcOutline scaled = Random(seed, vertex => Placed(vertex, p => p * size, 1));

            Assert.Equal((plain.Area, plain.Perimeter), (turned.Area, turned.Perimeter), Near(1e-9 * plain.Area));
            Assert.Equal((plain.Area, plain.Perimeter), (mirrored.Area, mirrored.Perimeter), Near(1e-9 * plain.Area));
            Assert.Equal((plain.Area, plain.Perimeter), (scaled.Area / (size * size), scaled.Perimeter / size), Near(1e-9 * plain.Area));
            Assert.Equal(0, (plain.Centroid.Turned(angle) + new Point2(away, -away) - turned.Centroid).Length, 1e-8);
            Assert.Equal(plain.ContainingPolygon(Tolerance).Area, turned.ContainingPolygon(Tolerance).Area, 1e-8 * plain.Area);
        }
    }

    private static Func<(double Area, double Length), (double Area, double Length), bool> Near(double off) =>
        (a, b) => Math.Abs(a.Area - b.Area) <= off && Math.Abs(a.Length - b.Length) <= off;

    private static ArcVertex Placed(ArcVertex vertex, Func<Point2, Point2> place, int side)
    {
        Point2 at = place(vertex.Point);
        return new ArcVertex(at.X, at.Y, side * vertex.Turn);
    }

    // Corners on a wavy ring, arcs between them from hardly bent to nearly half circles outwards, and less inwards, so that they never
    // meet.
    private static ArcOutline Random(int seed, Func<ArcVertex, ArcVertex> placed)
    {
        Random random = new(seed);
        int corners = random.Next(3, 20);
        return ArcOutline.From(Enumerable.Range(0, corners).Select(i =>
        {
            double turn = random.Next(5) switch
            {
                0 => 0,
                1 => 1e-9 * random.NextDouble(),
                2 => -0.3 * random.NextDouble(),
                3 => 2 * random.NextDouble(),
                _ => 0.5 * random.NextDouble(),
            };
            Point2 at = new Point2(50 + (2 * random.NextDouble()), 0).Turned(2 * Math.PI * (i + (0.2 * random.NextDouble())) / corners);
            return placed(new ArcVertex(at.X, at.Y, turn));
        }));
    }

    // Places on the curve by circles through three points of each piece: its ends and the top of its rise, not by the program's own
    // centres.
    private static Coordinate[] Curve(ArcOutline arcs)
    {
        List<Coordinate> places = [];
        for (int i = 0; i < arcs.Vertices.Count; i++)
        {
            ArcVertex from = arcs.Vertices[i];
            Point2 a = from.Point;
            Point2 b = arcs.Vertices[(i + 1) % arcs.Vertices.Count].Point;
            Halve(a, b, from.Turn, places);
        }

        return [.. places];
    }

    private static void Halve(Point2 a, Point2 b, double turn, List<Coordinate> places)
    {
        double rise = (b - a).Length / 2 * Math.Tan(turn / 4);
        if (Math.Abs(rise) < 1e-5)
        {
            places.Add(new Coordinate(a.X, a.Y));
            return;
        }

        Point2 along = (b - a) * (1 / (b - a).Length);
        Point2 top = ((a + b) * 0.5) + (new Point2(along.Y, -along.X) * rise);
        Halve(a, top, turn / 2, places);
        Halve(top, b, turn / 2, places);
    }
}
