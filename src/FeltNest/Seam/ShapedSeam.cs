using System.Globalization;
using FeltNest.Ball;

namespace FeltNest.Seam;

/// <summary>The two-harmonic seam moved along its normal within the sphere by h(t) = sum of h_k sin kt, t = s - pi/4, k even.</summary>
/// <remarks>The half-turn that lays the second panel turns t into -t and the normal's side round: every wave keeps it, so both panels stay
/// the same part. The half-turn about the pole adds pi to t, which even waves keep. The mirrors turn t into pi/2 - t, which k = 2, 6,
/// 10, ... keep and k = 4, 8, 12, ... do not. The place at s = 0 stays on the waist's great circle, so the waist is known exactly; the
/// seam beside which the waves are drawn is chosen so that the waist of the result is the one asked for. Own derivation.</remarks>
internal sealed class ShapedSeam : SeamCurve
{
    /// <summary>Highest wave taken: on a ball its length is about 10 mm, and no wave near it was found to save felt.</summary>
    public const int MostOrder = 30;

    private readonly TwoHarmonicSeam beside;
    private readonly (int Order, double Angle)[] waves;

    private ShapedSeam(double waistAngle, TwoHarmonicSeam beside, (int Order, double Angle)[] waves)
    {
        this.beside = beside;
        this.waves = waves;
        WaistAngle = waistAngle;
        IsMirrorSymmetric = waves.All(wave => KeepsMirrors(wave.Order) || wave.Angle == 0);
        SeamMeasure measure = SeamMeasure.Of(At);
        (Length, WidthAngle, GreatestCurvature) = (measure.Length, measure.WidthAngle, measure.GreatestCurvature);
    }

    /// <inheritdoc/>
    public override SeamFamily Family => SeamFamily.Shaped;

    /// <inheritdoc/>
    public override double Length { get; }

    /// <inheritdoc/>
    public override double WaistAngle { get; }

    /// <inheritdoc/>
    public override double WidthAngle { get; }

    /// <inheritdoc/>
    public override double GreatestCurvature { get; }

    /// <inheritdoc/>
    public override bool IsMirrorSymmetric { get; }

    /// <summary>Whether a wave keeps the panel's mirrors.</summary>
    public static bool KeepsMirrors(int order) => order % 4 == 2;

    /// <summary>The seam with a waist and waves.</summary>
    /// <param name="waistAngle">Waist of the seam itself as a great-circle arc, radians, 20 to 90 degrees.</param>
    /// <param name="waves">Orders, even, with their amounts as angles, radians.</param>
    /// <exception cref="InputException">An order is not allowed, or the waves leave no seam to draw them beside.</exception>
    public static ShapedSeam Of(double waistAngle, IReadOnlyList<(int Order, double Angle)> waves)
    {
        foreach ((int order, double _) in waves)
        {
            if (order % 2 != 0 || order is < 2 or > MostOrder || waves.Count(wave => wave.Order == order) > 1)
            {
                throw Refusal(FormattableString.Invariant($"order {order}; even numbers 2 to {MostOrder}, each once, are allowed"));
            }
        }

        double at = waistAngle + (2 * waves.Sum(wave => wave.Angle * Math.Sin(-wave.Order * Math.PI / 4)));
        return at is >= TwoHarmonicSeam.LeastWaistAngle and <= TwoHarmonicSeam.GreatestWaistAngle
            ? new ShapedSeam(waistAngle, TwoHarmonicSeam.ForWaist(at), [.. waves])
            : throw Refusal(string.Create(
                CultureInfo.InvariantCulture,
                $"the waves are drawn beside a seam with a waist of {at * 180 / Math.PI:0.##} degrees; 20 to 90 are allowed"));
    }

    /// <inheritdoc/>
    public override SeamJet At(double s)
    {
        SeamJet here = beside.At(s);
        SpherePoint third = beside.ThirdAt(s);
        (SpherePoint p, SpherePoint d, SpherePoint dd) = (here.Point, here.First, here.Second);
        double speed = here.Speed;
        double speedSlope = d.Dot(dd) / speed;
        double speedBend = (dd.Dot(dd) + d.Dot(third) - (speedSlope * speedSlope)) / speed;
        SpherePoint n = (1 / speed) * p.Cross(d);
        SpherePoint dn = (1 / speed) * (p.Cross(dd) - (speedSlope * n));
        SpherePoint ddn = (1 / speed) * (d.Cross(dd) + p.Cross(third) - (2 * speedSlope * dn) - (speedBend * n));
        (double h, double dh, double ddh) = Offset(s);
        (double sin, double cos) = Math.SinCos(h);
        SpherePoint place = (cos * p) + (sin * n);
        SpherePoint across = (cos * n) - (sin * p);
        return new SeamJet(
            place,
            (cos * d) + (sin * dn) + (dh * across),
            (cos * dd) + (sin * ddn) + (2 * dh * ((cos * dn) - (sin * d))) + (ddh * across) - (dh * dh * place));
    }

    private (double Value, double First, double Second) Offset(double s)
    {
        double value = 0;
        double first = 0;
        double second = 0;
        foreach ((int k, double angle) in waves)
        {
            (double sin, double cos) = Math.SinCos(k * (s - (Math.PI / 4)));
            value += angle * sin;
            first += k * angle * cos;
            second -= (double)k * k * angle * sin;
        }

        return (value, first, second);
    }

    private static InputException Refusal(string problem) => new(null, "seam.offsets", problem);
}
