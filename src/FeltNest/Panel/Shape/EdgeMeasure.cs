using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Shape;

/// <summary>Main dimensions of a closed edge that is kept by the half-turn about the origin.</summary>
internal readonly record struct EdgeMeasure
{
    /// <summary>Extent along u.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Extent along v.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Width at u = 0.</summary>
    public required double WaistMm { get; init; }

    /// <summary>Area inside.</summary>
    public required double AreaMm2 { get; init; }

    // Places at which the edge is looked at: enough for the sum of the area to be exact to the last digits, and to bracket each extreme.
    private const int Places = 720;

    /// <summary>Measures.</summary>
    public static EdgeMeasure Of(IPlaneCurve edge)
    {
        double step = edge.Period / Places;
        double area = 0;
        CurvePoint[] places = [.. Enumerable.Range(0, Places).Select(i => edge.At(i * step))];
        (int length, int width) = (0, 0);
        for (int i = 0; i < Places; i++)
        {
            area += places[i].Place.Cross(places[i].Derivative) * step / 2;
            length = Math.Abs(places[i].Place.X) > Math.Abs(places[length].Place.X) ? i : length;
            width = Math.Abs(places[i].Place.Y) > Math.Abs(places[width].Place.Y) ? i : width;
        }

        return new EdgeMeasure
        {
            LengthMm = 2 * Math.Abs(edge.At(Zero(edge, length * step, step, p => p.Derivative.X)).Place.X),
            WidthMm = 2 * Math.Abs(edge.At(Zero(edge, width * step, step, p => p.Derivative.Y)).Place.Y),
            WaistMm = 2 * Math.Abs(edge.At(Zero(edge, 0, step, p => p.Place.X)).Place.Y),
            AreaMm2 = area,
        };
    }

    // Where a quantity that changes sign near a parameter is zero, by secant steps kept near.
    private static double Zero(IPlaneCurve edge, double near, double step, Func<CurvePoint, double> quantity)
    {
        double a = near;
        double b = near + (step / 2);
        double fa = quantity(edge.At(a));
        double fb = quantity(edge.At(b));
        for (int i = 0; i < 20 && fa != 0 && fb != fa; i++)
        {
            double next = Math.Clamp(b - (fb * (b - a) / (fb - fa)), near - (8 * step), near + (8 * step));
            (a, fa, b) = (b, fb, next);
            fb = quantity(edge.At(b));
        }

        return Math.Abs(fa) < Math.Abs(fb) ? a : b;
    }
}
