using FeltNest.Ball;
using FeltNest.Numerics;

namespace FeltNest.Seam;

/// <summary>The seam that an elastic rod bent on the sphere takes: kg'' + kg^3/2 + c kg = 0 along its arc, closed, with four
/// inflections.</summary>
/// <remarks>Follows J. Langer and D. Singer, "The total squared curvature of closed curves", <i>J. Differential Geometry</i> 20, 1984, and
/// G. Brunnett and P. Crouch, "Elastic curves on the sphere",
/// <i>Adv. Comput. Math.</i> 2, 1994: kg = -A cn(p t, m) with A = 2 sqrt(m) p, length 8 K(m)/p, t the arc from the waist. The two numbers m
/// and p are found here by shooting from the waist to the inflection, which must lie on the axis about which the second panel is laid; the
/// curve is then kept as a series in its arc length.</remarks>
internal sealed class ElasticaSeam : SeamCurve
{
    /// <summary>Least waist taken, radians (20 degrees): below it the other panel's tips nearly meet.</summary>
    public const double LeastWaistAngle = 20 * Math.PI / 180;

    /// <summary>Greatest waist taken, radians (90 degrees): above it the flat panel is no longer narrower at its waist.</summary>
    public const double GreatestWaistAngle = 90 * Math.PI / 180;

    private readonly SeamSeries series;

    private ElasticaSeam(double waistAngle, double parameter, double rate)
    {
        WaistAngle = waistAngle;
        Parameter = parameter;
        Rate = rate;
        series = ElasticaShot.Series(waistAngle, parameter, rate);
        WidthAngle = SeamMeasure.Of(At).WidthAngle;
    }

    /// <summary>Parameter m of the elliptic function.</summary>
    public double Parameter { get; }

    /// <summary>Rate p of its argument by arc length at unit radius.</summary>
    public double Rate { get; }

    /// <inheritdoc/>
    public override SeamFamily Family => SeamFamily.Elastica;

    /// <inheritdoc/>
    public override double Length => 8 * EllipticIntegral.CompleteK(Parameter) / Rate;

    /// <inheritdoc/>
    public override double WaistAngle { get; }

    /// <inheritdoc/>
    public override double WidthAngle { get; }

    /// <inheritdoc/>
    public override double GreatestCurvature => 2 * Math.Sqrt(Parameter) * Rate;

    /// <inheritdoc/>
    public override bool IsMirrorSymmetric => true;

    /// <summary>The curve with a given waist.</summary>
    /// <param name="waistAngle">Waist as a great-circle arc, radians, from <see cref="LeastWaistAngle"/> to
    /// <see cref="GreatestWaistAngle"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The waist is outside that range.</exception>
    public static ElasticaSeam ForWaist(double waistAngle)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(waistAngle, LeastWaistAngle);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(waistAngle, GreatestWaistAngle);
        (double m, double p) = ElasticaShot.Solve(waistAngle);
        return new ElasticaSeam(waistAngle, m, p);
    }

    /// <inheritdoc/>
    public override SeamJet At(double s) => series.At(s);
}
