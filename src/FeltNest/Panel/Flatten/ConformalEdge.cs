using FeltNest.Geometry;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Flatten;

/// <summary>A closed flat edge from its curvature at equal steps of the seam parameter, every piece as long as its piece of seam.</summary>
/// <remarks>Heading and place are integrated as Fourier series over half a turn; the half-turn makes them close.</remarks>
internal sealed class ConformalEdge
{
    private readonly DomainEdge[] places;
    private readonly Point2[] points;

    /// <summary>Integrates.</summary>
    /// <param name="domain">The piece of sphere.</param>
    /// <param name="normalSlope">dw/dn by seam parameter.</param>
    /// <param name="count">Steps over the whole seam, a multiple of 4.</param>
    public ConformalEdge(PanelDomain domain, Func<double, double> normalSlope, int count)
    {
        places = [.. Enumerable.Range(0, count).Select(i => domain.EdgeAt(Parameter(i, count)))];
        double[] rate =
        [
            .. places.Select((edge, i) => i < count / 2 ? edge.Speed * (edge.Curvature + normalSlope(Parameter(i, count))) : 0),
        ];
        for (int i = count / 2; i < count; i++)
        {
            rate[i] = rate[i - (count / 2)];
        }

        double mean = rate.Average();
        TurningError = 2 * Math.PI * Math.Abs(mean - 1);
        double[] heading = Integral([.. rate.Select(r => r - mean)]);
        double[] dx = new double[count];
        double[] dy = new double[count];
        for (int i = 0; i < count; i++)
        {
            (double sin, double cos) = Math.SinCos(Parameter(i, count) + heading[i] - heading[0]);
            (dx[i], dy[i]) = (places[i].Speed * cos, places[i].Speed * sin);
        }

        double[] x = Integral(dx);
        double[] y = Integral(dy);
        int tip = count / 4;
        double turn = -Math.Atan2(y[tip], x[tip]);
        points = [.. x.Zip(y, (a, b) => new Point2(a, b).Turned(turn))];
    }

    /// <summary>How far the edge's whole turning is from a full turn, radians.</summary>
    public double TurningError { get; }

    /// <summary>Coefficients of a basis's rim functions for one coordinate of the edge.</summary>
    public double[] Rim(DiscBasis basis, Func<Point2, double> coordinate)
    {
        double[] to = new double[basis.RimCount];
        for (int m = 0; m < to.Length; m++)
        {
            DiscMode mode = basis.Modes[m];
            for (int i = 0; i < points.Length; i++)
            {
                double angle = mode.Turns * places[i].Angle;
                to[m] += (mode.IsSine ? Math.Sin(angle) : Math.Cos(angle)) * coordinate(points[i]) * places[i].AngleSlope;
            }

            to[m] *= 2.0 / (points.Length * mode.Scale);
        }

        return to;
    }

    private static double Parameter(int i, int count) => 2 * Math.PI * i / count;

    // Integral of a periodic function without mean, itself without mean, by its Fourier series.
    private static double[] Integral(double[] f)
    {
        int n = f.Length;
        double[] to = new double[n];
        for (int k = 1; k < n / 2; k++)
        {
            double re = 0;
            double im = 0;
            for (int i = 0; i < n; i++)
            {
                (double sin, double cos) = Math.SinCos(2 * Math.PI * ((long)k * i % n) / n);
                re += f[i] * cos;
                im += f[i] * sin;
            }

            for (int i = 0; i < n; i++)
            {
                (double sin, double cos) = Math.SinCos(2 * Math.PI * ((long)k * i % n) / n);
                to[i] += 2 * ((re * sin) - (im * cos)) / ((double)n * k);
            }
        }

        return to;
    }
}
