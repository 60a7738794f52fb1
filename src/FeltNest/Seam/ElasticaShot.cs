using FeltNest.Numerics;

namespace FeltNest.Seam;

/// <summary>An eighth of the elastica, from the waist to the inflection, by the equations of a curve on the sphere: P' = T, T' = kg P x T -
/// P, kg'' = -kg^3/2 - (1 - 2m) p^2 kg.</summary>
internal static class ElasticaShot
{
    // Samples kept of the eighth and classical Runge-Kutta steps between two of them: the steps leave 1e-15, and 64 samples carry all
    // harmonics above rounding for waists from 20 degrees.
    private const int Samples = 64;
    private const int Steps = 24;

    /// <summary>Parameter m and rate p whose curve ends at (1, -1, 0)/sqrt 2.</summary>
    /// <param name="waistAngle">Waist as a great-circle arc, radians.</param>
    public static (double Parameter, double Rate) Solve(double waistAngle)
    {
        // The curve of 60 degrees is followed in steps of at most 5 degrees, each near enough for Newton's method.
        const double start = Math.PI / 3;
        const double most = 5 * Math.PI / 180;
        int stages = 1 + (int)Math.Ceiling(Math.Abs(waistAngle - start) / most);
        (double m, double p) = (0.2229, 1.309);
        for (int stage = 1; stage <= stages; stage++)
        {
            (m, p) = Newton(start + ((waistAngle - start) * (stage - 1) / Math.Max(1, stages - 1)), m, p);
        }

        return (m, p);
    }

    /// <summary>The whole curve as a series.</summary>
    public static SeamSeries Series(double waistAngle, double m, double p)
    {
        const int whole = 8 * Samples;
        const int quarter = 2 * Samples;
        SpherePoint[] eighth = Run(waistAngle, m, p);

        // s meets pi/2 - s; then x is odd about the waist and even about the tip, z even about both.
        SpherePoint At(int i)
        {
            int j = ((i % whole) + whole) % whole;
            return j switch
            {
                > 2 * quarter => AboutWaist(At(whole - j)),
                > quarter => AboutTip(At((2 * quarter) - j)),
                > Samples => Mate(At(quarter - j)),
                _ => eighth[j],
            };
        }

        static SpherePoint AboutWaist(SpherePoint q) => new(-q.X, q.Y, q.Z);
        static SpherePoint AboutTip(SpherePoint q) => new(q.X, -q.Y, q.Z);
        static SpherePoint Mate(SpherePoint q) => new(-q.Y, -q.X, -q.Z);
        double[] plan = new double[Samples];
        double[] height = new double[Samples / 2];
        for (int i = 0; i < whole; i++)
        {
            SpherePoint here = At(i);
            for (int k = 0; k < plan.Length; k++)
            {
                plan[k] += 2 * here.X * Math.Sin(2 * Math.PI * (((2L * k) + 1) * i % whole) / whole) / whole;
            }

            for (int k = 0; k < height.Length; k++)
            {
                height[k] += 2 * here.Z * Math.Cos(2 * Math.PI * (((4L * k) + 2) * i % whole) / whole) / whole;
            }
        }

        return new SeamSeries(plan, [], height, []);
    }

    private static (double M, double P) Newton(double waistAngle, double m, double p)
    {
        // Step of the difference quotients, small against both numbers, and rounds: from a start 5 degrees off six are enough, the rest
        // cost little.
        const double h = 1e-6;
        const int rounds = 12;
        for (int i = 0; i < rounds; i++)
        {
            (double f, double g) = Miss(m, p);
            (double fm, double gm) = Miss(m + h, p);
            (double fp, double gp) = Miss(m, p + h);
            (double a, double b, double c, double d) = ((fm - f) / h, (fp - f) / h, (gm - g) / h, (gp - g) / h);
            double det = (a * d) - (b * c);
            m -= ((d * f) - (b * g)) / det;
            p -= ((a * g) - (c * f)) / det;
        }

        return (m, p);

        (double Height, double Aside) Miss(double tryM, double tryP)
        {
            SpherePoint end = Run(waistAngle, tryM, tryP)[^1];
            return (end.Z, end.X + end.Y);
        }
    }

    private static SpherePoint[] Run(double waistAngle, double m, double p)
    {
        (double sin, double cos) = Math.SinCos(waistAngle / 2);
        double step = EllipticIntegral.CompleteK(m) / p / (Samples * Steps);
        double c = (1 - (2 * m)) * p * p;
        State here = new()
        {
            Point = new(0, -sin, cos),
            Tangent = new(1, 0, 0),
            Curvature = -2 * Math.Sqrt(m) * p,
            CurvatureSlope = 0,
        };
        SpherePoint[] to = new SpherePoint[Samples + 1];
        to[0] = here.Point;
        for (int i = 1; i <= Samples; i++)
        {
            for (int k = 0; k < Steps; k++)
            {
                State a = Slope(here);
                State b = Slope(here.Moved(a, step / 2));
                State d = Slope(here.Moved(b, step / 2));
                State e = Slope(here.Moved(d, step));
                here = here.Moved(a, step / 6).Moved(b, step / 3).Moved(d, step / 3).Moved(e, step / 6);
            }

            to[i] = here.Point;
        }

        return to;

        State Slope(State at) => new()
        {
            Point = at.Tangent,
            Tangent = (at.Curvature * at.Point.Cross(at.Tangent)) - at.Point,
            Curvature = at.CurvatureSlope,
            CurvatureSlope = -at.Curvature * ((at.Curvature * at.Curvature / 2) + c),
        };
    }

    private readonly record struct State
    {
        public required SpherePoint Point { get; init; }

        public required SpherePoint Tangent { get; init; }

        public required double Curvature { get; init; }

        public required double CurvatureSlope { get; init; }

        public State Moved(State slope, double by) => new()
        {
            Point = Point + (by * slope.Point),
            Tangent = Tangent + (by * slope.Tangent),
            Curvature = Curvature + (by * slope.Curvature),
            CurvatureSlope = CurvatureSlope + (by * slope.CurvatureSlope),
        };
    }
}
