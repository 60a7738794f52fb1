using System.Globalization;
using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>The flat piece at unit sphere radius with its centroid at 0: stations round its edge, and quadrature over the rays from the
/// centroid to them.</summary>
/// <remarks>With the edge P(t) the integral of f over the piece is that of f(r P) r (P x P') over r from 0 to 1 and t: exact quadrature in
/// r, equal steps in t.</remarks>
internal sealed class WrapRegion
{
    private readonly double[] speeds;

    private WrapRegion(Point2[] places, Point2[] steps, double[] parameters, bool halfTurn, bool mirrors)
    {
        Edge = places;
        Steps = steps;
        Parameters = parameters;
        HasHalfTurn = halfTurn;
        HasMirrors = mirrors;
        speeds = [.. steps.Select(step => step.Length)];
    }

    /// <summary>Stations on the edge, counter-clockwise from the waist at negative v.</summary>
    public Point2[] Edge { get; }

    /// <summary>Edge vector of each station: tangent times the length of edge it stands for.</summary>
    public Point2[] Steps { get; }

    /// <summary>Seam parameter of each station of an edge map; the share of the edge's length times 2 pi of any other outline.</summary>
    public double[] Parameters { get; }

    /// <summary>Whether the piece is kept by the half-turn about its centroid.</summary>
    public bool HasHalfTurn { get; }

    /// <summary>Whether the piece is kept by the mirrors in both axes as well.</summary>
    public bool HasMirrors { get; }

    /// <summary>Stations that are enough for integrals: half of them where the half-turn gives the rest.</summary>
    public int Half => HasHalfTurn ? Edge.Length / 2 : Edge.Length;

    /// <summary>Unit normal that points out of the piece at a station.</summary>
    public Point2 Outward(int station) => -(Steps[station] * (1 / speeds[station])).Left;

    /// <summary>The piece bounded by a smooth curve or by arcs, scaled to unit radius.</summary>
    /// <param name="edge">The edge by a parameter over 2 pi, counter-clockwise, mm.</param>
    /// <param name="centroid">Its centroid, mm.</param>
    /// <param name="start">Parameter of the waist at negative v.</param>
    /// <param name="stations">How many stations, a multiple of 4.</param>
    /// <param name="radius">Radius of the sphere, mm.</param>
    /// <exception cref="NoAnswerException">The edge cannot be seen whole from the centroid.</exception>
    public static WrapRegion Of(IPlaneCurve edge, Point2 centroid, double start, int stations, double radius)
    {
        double step = edge.Period / stations;
        CurvePoint[] points = [.. Enumerable.Range(0, stations).Select(i => edge.At((start + (i * step)) % edge.Period))];
        Point2[] places = [.. points.Select(p => (p.Place - centroid) * (1 / radius))];
        Point2[] steps = [.. points.Select(p => p.Derivative * (step / radius))];
        for (int i = 0; i < stations; i++)
        {
            if (!(places[i].Cross(steps[i]) > 0))
            {
                Point2 at = points[i].Place;
                throw new NoAnswerException(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"the outline cannot be laid on the sphere: its edge near ({at.X:0.##}, {at.Y:0.##}) mm cannot be seen from its "
                            + $"centroid"));
            }
        }

        // Outlines off their own image by no more than this, at unit radius, are meant to be symmetric: 0.0003 mm on a ball.
        const double even = 1e-5;
        bool halfTurn = Enumerable.Range(0, stations).All(i => (places[i] + places[(i + (stations / 2)) % stations]).Length < even);
        bool mirrors = halfTurn
            && Enumerable.Range(0, stations)
                .All(i =>
                    Math.Abs(places[i].X + places[(stations - i) % stations].X) < even
                        && Math.Abs(places[i].Y - places[(stations - i) % stations].Y) < even);
        return new WrapRegion(places, steps, [.. Enumerable.Range(0, stations).Select(i => 2 * Math.PI * i / stations)], halfTurn, mirrors);
    }
}
