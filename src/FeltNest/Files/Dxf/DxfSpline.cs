using System.Globalization;
using FeltNest.Geometry;

namespace FeltNest.Files.Dxf;

/// <summary>A SPLINE of a drawing as points on it: control points, knots and weights of a rational B-spline.</summary>
/// <remarks>Values by the algorithm of C. de Boor (<i>A Practical Guide to Splines</i>, 1978, chapter 10); group codes of the published DXF
/// reference.</remarks>
internal sealed class DxfSpline
{
    // Points of the curve lie about this near to each other, mm: chords of a tip of 10 mm radius then stay within 0.001 mm.
    private const double StepMm = 0.25;

    // Fewest points of a piece between two knots, most control points and highest degree.
    private const int Fewest = 8;
    private const int MostControls = 5000;
    private const int HighestDegree = 10;

    private readonly int degree;
    private readonly double[] knots;
    private readonly (double X, double Y, double Weight)[] controls;

    private DxfSpline(int degree, double[] knots, (double X, double Y, double Weight)[] controls)
    {
        this.degree = degree;
        this.knots = knots;
        this.controls = controls;
    }

    /// <summary>Places of the spline in order, in drawing units.</summary>
    /// <param name="entity">The entity.</param>
    /// <param name="scale">Millimetres a drawing unit.</param>
    /// <exception cref="InputException">It has no sound control points, knots or weights.</exception>
    public static IReadOnlyList<Point2> Places(DxfEntity entity, double scale)
    {
        double degree = entity.Number(71, 3);
        double[] x = Numbers(entity, 10);
        double[] y = Numbers(entity, 20);
        double[] knots = Numbers(entity, 40);
        double[] weights = Numbers(entity, 41);
        if (x.Length == 0)
        {
            throw entity.Fault("has no control points: save it with them, or as a polyline");
        }

        if (!(degree >= 1 && degree <= HighestDegree) || degree != Math.Floor(degree) || x.Length > MostControls || x.Length <= degree)
        {
            throw entity.Fault(string.Create(
                CultureInfo.InvariantCulture,
                $"has degree {degree} and {x.Length} control points: degree 1 to {HighestDegree} and up to {MostControls} points, more "
                    + $"than the degree, are read"));
        }

        bool rises = knots.Zip(knots.Skip(1)).All(pair => pair.First <= pair.Second);
        if (y.Length != x.Length || knots.Length != x.Length + degree + 1 || !rises)
        {
            throw entity.Fault($"has {knots.Length} knots and {y.Length} values of y for {x.Length} control points: rising knots, as "
                + $"many as "
                + $"points and degree and one, are wanted");
        }

        if (weights.Length != 0 && (weights.Length != x.Length || weights.Any(weight => !(weight > 0))))
        {
            throw entity.Fault("has weights that are not above 0, or not one for each control point");
        }

        return new DxfSpline((int)degree, knots, [.. x.Select((value, i) => (value, y[i], weights.Length == 0 ? 1 : weights[i]))])
            .Places(scale);
    }

    private static double[] Numbers(DxfEntity entity, int code) =>
        [.. entity.Groups.Where(group => group.Code == code).Select(entity.NumberOf)];

    private List<Point2> Places(double scale)
    {
        List<Point2> places = [];
        int last = controls.Length - 1;
        for (int span = degree; span <= last; span++)
        {
            (double from, double to) = (knots[span], knots[span + 1]);
            if (!(to > from))
            {
                continue;
            }

            double length = Enumerable.Range(span - degree, degree)
                .Sum(i => new Point2(controls[i + 1].X - controls[i].X, controls[i + 1].Y - controls[i].Y).Length);
            int pieces = (int)Math.Clamp(Math.Ceiling(length * scale / StepMm), Fewest, Outline.MostPoints);
            for (int k = places.Count == 0 ? 0 : 1; k <= pieces; k++)
            {
                places.Add(At(span, from + ((to - from) * k / pieces)));
            }

            // More is refused with the line.
            if (places.Count > Outline.MostPoints)
            {
                break;
            }
        }

        return places;
    }

    private Point2 At(int span, double t)
    {
        (double X, double Y, double W)[] d =
        [
            .. Enumerable.Range(span - degree, degree + 1)
                .Select(i => (controls[i].X * controls[i].Weight, controls[i].Y * controls[i].Weight, controls[i].Weight)),
        ];
        for (int round = 1; round <= degree; round++)
        {
            for (int j = degree; j >= round; j--)
            {
                int i = j + span - degree;
                double share = (t - knots[i]) / (knots[i + degree - round + 1] - knots[i]);
                d[j] = (Mix(d[j - 1].X, d[j].X, share), Mix(d[j - 1].Y, d[j].Y, share), Mix(d[j - 1].W, d[j].W, share));
            }
        }

        return new Point2(d[degree].X / d[degree].W, d[degree].Y / d[degree].W);

        static double Mix(double a, double b, double share) => ((1 - share) * a) + (share * b);
    }
}
