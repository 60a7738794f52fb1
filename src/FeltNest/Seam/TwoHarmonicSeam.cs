using FeltNest.Ball;
using FeltNest.Numerics;

namespace FeltNest.Seam;

/// <summary>The seam with two harmonics in its plan: x = a sin s + b sin 3s, y = b cos 3s - a cos s, z = 2 sqrt(ab) cos 2s with a = 1 -
/// beta, b = beta.</summary>
/// <remarks>Follows R. Ferreol, <i>Encyclopedie des formes mathematiques remarquables</i>, "Seam line of a tennis ball", and D. Allison, R.
/// Diaz, K. Miller, "Generalized Baseball Curves", <i>Loci</i> (MAA) 2008, section 3; differs in the frame, which is the panel's own
/// (turned about z so that a tip lies on +x). The closed forms of length, width and curvature are derived here.</remarks>
internal sealed class TwoHarmonicSeam : SeamCurve
{
    /// <summary>Least waist taken, radians (20 degrees): below it the other panel's tips nearly meet, and flattening settles too slowly to
    /// be trusted.</summary>
    public const double LeastWaistAngle = 20 * Math.PI / 180;

    /// <summary>Greatest waist taken, radians (90 degrees): above it the flat panel is no longer narrower at its waist.</summary>
    public const double GreatestWaistAngle = 90 * Math.PI / 180;

    private readonly double a;
    private readonly double b;
    private readonly double height;

    private TwoHarmonicSeam(double beta)
    {
        Beta = beta;
        a = 1 - beta;
        b = beta;
        height = 2 * Math.Sqrt(a * b);
    }

    /// <summary>Share of the third harmonic, b/(a + b): 1/4 is near a real ball.</summary>
    public double Beta { get; }

    /// <inheritdoc/>
    public override SeamFamily Family => SeamFamily.TwoHarmonic;

    /// <inheritdoc/>
    public override double Length => 4 * Math.Sqrt(1 + (8 * b)) * EllipticIntegral.CompleteE(4 * a * b / (1 + (8 * b)));

    /// <inheritdoc/>
    public override double WaistAngle => 2 * Math.Asin(1 - (2 * b));

    /// <inheritdoc/>
    public override double WidthAngle => 2 * Math.Asin(Math.Sqrt(Math.Pow(1 + (2 * b), 3) / (27 * b)));

    /// <inheritdoc/>
    public override double GreatestCurvature => height * (3 + (2 * b)) / Math.Pow(1 + (2 * b), 2);

    /// <inheritdoc/>
    public override bool IsMirrorSymmetric => true;

    /// <summary>The curve with a given waist.</summary>
    /// <param name="waistAngle">Waist as a great-circle arc, radians, from <see cref="LeastWaistAngle"/> to
    /// <see cref="GreatestWaistAngle"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The waist is outside that range.</exception>
    public static TwoHarmonicSeam ForWaist(double waistAngle)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(waistAngle, LeastWaistAngle);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(waistAngle, GreatestWaistAngle);
        return new TwoHarmonicSeam((1 - Math.Sin(waistAngle / 2)) / 2);
    }

    /// <inheritdoc/>
    public override SeamJet At(double s)
    {
        (double sin, double cos) = Math.SinCos(s);
        (double sin3, double cos3) = Math.SinCos(3 * s);
        (double sin2, double cos2) = Math.SinCos(2 * s);
        return new SeamJet(
            new((a * sin) + (b * sin3), (b * cos3) - (a * cos), height * cos2),
            new((a * cos) + (3 * b * cos3), (a * sin) - (3 * b * sin3), -2 * height * sin2),
            new(-(a * sin) - (9 * b * sin3), (a * cos) - (9 * b * cos3), -4 * height * cos2));
    }

    /// <summary>Third derivative by the parameter.</summary>
    internal SpherePoint ThirdAt(double s)
    {
        (double sin, double cos) = Math.SinCos(s);
        (double sin3, double cos3) = Math.SinCos(3 * s);
        return new(-(a * cos) - (27 * b * cos3), -(a * sin) + (27 * b * sin3), 8 * height * Math.Sin(2 * s));
    }
}
