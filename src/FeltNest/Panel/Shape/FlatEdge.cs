using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Shape;

/// <summary>The edge of a flat map by seam parameter, in mm, before allowances.</summary>
internal sealed class FlatEdge : IPlaneCurve
{
    private readonly PanelDomain domain;
    private readonly double radius;
    private readonly (int Turns, double Cosine, double Sine)[] u;
    private readonly (int Turns, double Cosine, double Sine)[] v;

    /// <summary>Takes the rim's harmonics from a map.</summary>
    /// <param name="map">Flat map at unit radius.</param>
    /// <param name="radius">Radius of the sphere, mm.</param>
    public FlatEdge(FlatMap map, double radius)
    {
        domain = map.Domain;
        this.radius = radius;
        u = Harmonics(map.Space.U, map.Coefficients[..map.Space.U.Count]);
        v = Harmonics(map.Space.V, map.Coefficients[map.Space.U.Count..]);
    }

    /// <inheritdoc/>
    public double Period => 2 * Math.PI;

    /// <inheritdoc/>
    public CurvePoint At(double parameter)
    {
        (Point2 place, Point2 first, _, _) = Jet(parameter);
        return new CurvePoint(place, first);
    }

    /// <summary>Curvature of the flat edge, 1/mm, positive where the panel is convex.</summary>
    public double CurvatureAt(double s)
    {
        (_, Point2 first, Point2 second, _) = Jet(s);
        return first.Cross(second) / Math.Pow(first.Length, 3);
    }

    /// <summary>Length of seam on the sphere over length of flat edge.</summary>
    public double StretchAt(double s)
    {
        (_, Point2 first, _, double speed) = Jet(s);
        return speed / first.Length;
    }

    private static (int Turns, double Cosine, double Sine)[] Harmonics(DiscBasis basis, ReadOnlySpan<double> coefficients)
    {
        SortedDictionary<int, (double Cosine, double Sine)> found = [];
        for (int i = 0; i < basis.RimCount; i++)
        {
            DiscMode mode = basis.Modes[i];
            (double cosine, double sine) = found.GetValueOrDefault(mode.Turns);
            double value = coefficients[i] * mode.Scale;
            found[mode.Turns] = mode.IsSine ? (cosine, sine + value) : (cosine + value, sine);
        }

        return [.. found.Select(entry => (entry.Key, entry.Value.Cosine, entry.Value.Sine))];
    }

    private (Point2 Place, Point2 First, Point2 Second, double Speed) Jet(double s)
    {
        // The rim angle runs evenly with s in every domain with a flat edge to cut, so its own second derivative is zero.
        DomainEdge edge = domain.EdgeAt(s);
        (double pu, double du, double ddu) = Sum(u, edge.Angle);
        (double pv, double dv, double ddv) = Sum(v, edge.Angle);
        double rate = radius * edge.AngleSlope;
        return (new(
            radius * pu, radius * pv), new(rate * du, rate * dv), new(rate * edge.AngleSlope * ddu, rate * edge.AngleSlope * ddv),
            radius * edge.Speed);
    }

    private static (double Value, double First, double Second) Sum((int Turns, double Cosine, double Sine)[] series, double angle)
    {
        double value = 0;
        double first = 0;
        double second = 0;
        foreach ((int k, double c, double d) in series)
        {
            (double sin, double cos) = Math.SinCos(k * angle);
            double here = (c * cos) + (d * sin);
            value += here;
            first += k * ((d * cos) - (c * sin));
            second -= (double)k * k * here;
        }

        return (value, first, second);
    }
}
