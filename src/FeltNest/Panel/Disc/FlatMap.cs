using FeltNest.Geometry;
using FeltNest.Numerics;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Disc;

/// <summary>A flat panel as a polynomial map from the disc, at unit sphere radius, together with the piece of sphere it covers.</summary>
internal sealed class FlatMap
{
    private readonly double[] coefficients;
    private readonly double[] values;
    private readonly double[] dx;
    private readonly double[] dy;

    /// <summary>A map with the given coefficients, those of u first.</summary>
    public FlatMap(PanelDomain domain, FlatSpace space, double[] coefficients)
    {
        Domain = domain;
        Space = space;
        this.coefficients = coefficients;
        int most = Math.Max(space.U.Count, space.V.Count);
        (values, dx, dy) = (new double[most], new double[most], new double[most]);
    }

    /// <summary>The piece of sphere.</summary>
    public PanelDomain Domain { get; }

    /// <summary>The polynomials.</summary>
    public FlatSpace Space { get; }

    /// <summary>Coefficients, those of u first.</summary>
    public ReadOnlySpan<double> Coefficients => coefficients;

    /// <summary>Place in the flat and gradients of both coordinates.</summary>
    public FlatJet At(double x, double y)
    {
        (double u, double ux, double uy) = Sum(Space.U, coefficients.AsSpan(0, Space.U.Count), x, y);
        (double v, double vx, double vy) = Sum(Space.V, coefficients.AsSpan(Space.U.Count), x, y);
        return new FlatJet(new Point2(u, v), ux, uy, vx, vy);
    }

    /// <summary>The same map in a space of higher degree.</summary>
    public FlatMap Raised(FlatSpace space)
    {
        double[] to = new double[space.Count];
        Copy(Space.U, coefficients.AsSpan(0, Space.U.Count), space.U, to.AsSpan(0, space.U.Count));
        Copy(Space.V, coefficients.AsSpan(Space.U.Count), space.V, to.AsSpan(space.U.Count));
        return new FlatMap(Domain, space, to);
    }

    private static void Copy(DiscBasis from, ReadOnlySpan<double> values, DiscBasis to, Span<double> target)
    {
        Dictionary<DiscMode, int> places = to.Modes.Select((mode, i) => (mode, i)).ToDictionary(pair => pair.mode, pair => pair.i);
        for (int i = 0; i < values.Length; i++)
        {
            if (places.TryGetValue(from.Modes[i], out int place))
            {
                target[place] = values[i];
            }
        }
    }

    private (double Value, double Dx, double Dy) Sum(DiscBasis basis, ReadOnlySpan<double> c, double x, double y)
    {
        basis.Evaluate(x, y, values, dx, dy);
        return (DenseRows.Dot(c, values), DenseRows.Dot(c, dx), DenseRows.Dot(c, dy));
    }
}
