using FeltNest.Ball;

namespace FeltNest.Seam;

/// <summary>The seam of four equal circular arcs that join tangentially at the four places where the seam crosses the great circle midway
/// between the panels' poles.</summary>
/// <remarks><para>Named as a reunion of four semicircles (waist 90 degrees) in R. Ferreol, <i>Encyclopedie des formes mathematiques
/// remarquables</i>, "Seam line of a tennis ball"; the family by waist is an own derivation: each arc lies in a plane n.r = d, with n = d
/// (0, -sqrt 2, q) for the arc of the waist at s = 0.</para>
/// <para>The tangent is continuous, the curvature changes its sign at the joints s = pi/4 + k pi/2, where its mean, 0, is given. The
/// parameter is even in arc length.</para></remarks>
internal sealed class FourArcSeam : SeamCurve
{
    /// <summary>Least waist taken, radians (20 degrees): below it the other panel's tips nearly meet.</summary>
    public const double LeastWaistAngle = 20 * Math.PI / 180;

    /// <summary>Greatest waist taken, radians (90 degrees): there the arcs are semicircles, above it the flat panel is no longer narrower
    /// at its waist.</summary>
    public const double GreatestWaistAngle = 90 * Math.PI / 180;

    // Parameters this near to a joint, radians, are at it.
    private const double AtJoint = 1e-12;

    private readonly SpherePoint centre;
    private readonly SpherePoint towards;
    private readonly double reach;
    private readonly double sweep;

    private FourArcSeam(double waistAngle)
    {
        WaistAngle = waistAngle;
        (double sin, double cos) = Math.SinCos(waistAngle / 2);
        double q = (1 - (Math.Sqrt(2) * sin)) / cos;
        double d = 1 / Math.Sqrt(2 + (q * q));
        Radius = Math.Acos(d);
        reach = Math.Sin(Radius);
        centre = d * new SpherePoint(0, -Math.Sqrt(2) * d, q * d);
        towards = (1 / reach) * (new SpherePoint(0, -sin, cos) - centre);
        SpherePoint joint = new(Math.Sqrt(0.5), -Math.Sqrt(0.5), 0);
        sweep = Math.Atan2(joint.X, (joint - centre).Dot(towards));
        WidthAngle = SeamMeasure.Of(At).WidthAngle;
    }

    /// <summary>Angular radius of the arcs, radians.</summary>
    public double Radius { get; }

    /// <inheritdoc/>
    public override SeamFamily Family => SeamFamily.FourArc;

    /// <inheritdoc/>
    public override double Length => 8 * sweep * reach;

    /// <inheritdoc/>
    public override double WaistAngle { get; }

    /// <inheritdoc/>
    public override double WidthAngle { get; }

    /// <inheritdoc/>
    public override double GreatestCurvature => 1 / Math.Tan(Radius);

    /// <inheritdoc/>
    public override bool IsMirrorSymmetric => true;

    /// <inheritdoc/>
    public override bool HasJoints => true;

    /// <summary>The curve with a given waist.</summary>
    /// <param name="waistAngle">Waist as a great-circle arc, radians, from <see cref="LeastWaistAngle"/> to
    /// <see cref="GreatestWaistAngle"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The waist is outside that range.</exception>
    public static FourArcSeam ForWaist(double waistAngle)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(waistAngle, LeastWaistAngle);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(waistAngle, GreatestWaistAngle);
        return new FourArcSeam(waistAngle);
    }

    /// <inheritdoc/>
    public override SeamJet At(double s)
    {
        const double quarter = Math.PI / 2;
        double arc = Math.Floor((s / quarter) + 0.5);
        double here = s - (arc * quarter);
        double rate = 4 * sweep / Math.PI;
        (double sin, double cos) = Math.SinCos(rate * here);
        SpherePoint inward = reach * ((cos * towards) + new SpherePoint(sin, 0, 0));
        SpherePoint along = (reach * rate) * ((-sin * towards) + new SpherePoint(cos, 0, 0));
        SeamJet jet = new(centre + inward, along, -(rate * rate) * inward);

        // Each arc is the one before it turned a quarter about z and mirrored in the equator.
        int turns = (int)Math.IEEERemainder(arc, 4) & 3;
        SeamJet placed = new(Turned(jet.Point, turns), Turned(jet.First, turns), Turned(jet.Second, turns));
        return Math.Abs(Math.Abs(here) - (quarter / 2)) > AtJoint
            ? placed
            : placed with { Second = -(placed.Speed * placed.Speed) * placed.Point };
    }

    private static SpherePoint Turned(SpherePoint p, int turns) => turns switch
    {
        0 => p,
        1 => new(-p.Y, p.X, -p.Z),
        2 => new(-p.X, -p.Y, p.Z),
        _ => new(p.Y, -p.X, -p.Z),
    };
}
