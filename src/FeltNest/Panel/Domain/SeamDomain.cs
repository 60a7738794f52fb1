using FeltNest.Numerics;
using FeltNest.Seam;

namespace FeltNest.Panel.Domain;

/// <summary>The panel inside a seam as the image of the disc.</summary>
/// <remarks>On the sphere lambda runs along the great circle through pole and tips and psi across it: (sin lambda cos psi, sin psi, cos
/// lambda cos psi). Along the seam both are smooth in s, so with x = sin s and y = -cos s on the rim each can be written f(x) + g(x) y with
/// smooth f and g: taken over the whole disc this fills the panel. Own derivation.</remarks>
internal sealed class SeamDomain : PanelDomain
{
    // Terms of the smooth functions: for waists of 20 to 90 degrees 64 leave an error below 1e-11.
    private const int Terms = 64;

    private readonly SeamCurve seam;
    private readonly PiecewiseSeries along;
    private readonly PiecewiseSeries across;
    private readonly PiecewiseSeries? alongTilt;
    private readonly PiecewiseSeries? acrossShift;

    /// <summary>Builds the functions.</summary>
    public SeamDomain(SeamCurve seam)
    {
        this.seam = seam;

        // Joints of the seam at pi/4 and so on give the functions joints at plus and minus the sine of it.
        double[] joints = seam.HasJoints ? [-Math.Sqrt(0.5), Math.Sqrt(0.5)] : [];
        along = Function(joints, (lower, upper, y) => (Along(lower) + Along(upper)) / 2);
        across = Function(joints, (lower, upper, y) => (Across(lower) - Across(upper)) / (2 * y));
        if (!seam.IsMirrorSymmetric)
        {
            alongTilt = Function(joints, (lower, upper, y) => (Along(lower) - Along(upper)) / (2 * y));
            acrossShift = Function(joints, (lower, upper, y) => (Across(lower) + Across(upper)) / 2);
        }
    }

    /// <summary>The seam round the panel.</summary>
    public SeamCurve Seam => seam;

    /// <inheritdoc/>
    public override bool IsMirrorSymmetric => seam.IsMirrorSymmetric;

    /// <inheritdoc/>
    public override DomainJet At(double x, double y)
    {
        ChartJet chart = ChartAt(x, y);
        (double sinL, double cosL) = Math.SinCos(chart.Along);
        (double sinP, double cosP) = Math.SinCos(chart.Across);
        SpherePoint byAlong = new(cosL * cosP, 0, -sinL * cosP);
        SpherePoint byAcross = new(-sinL * sinP, cosP, -cosL * sinP);
        return new DomainJet(
            new(sinL * cosP, sinP, cosL * cosP),
            (chart.AlongDx * byAlong) + (chart.AcrossDx * byAcross),
            (chart.AlongDy * byAlong) + (chart.AcrossDy * byAcross));
    }

    /// <summary>Angles along and across the panel with their derivatives.</summary>
    public ChartJet ChartAt(double x, double y)
    {
        (double l, double dl) = along.At(x);
        (double h, double dh) = across.At(x);
        (double m, double dm) = alongTilt?.At(x) ?? (0, 0);
        (double c, double dc) = acrossShift?.At(x) ?? (0, 0);
        return new ChartJet(l + (m * y), dl + (dm * y), m, c + (h * y), dc + (dh * y), h);
    }

    /// <inheritdoc/>
    public override DomainEdge EdgeAt(double s)
    {
        SeamJet jet = seam.At(s);
        return new DomainEdge
        {
            Angle = s - (Math.PI / 2),
            AngleSlope = 1,
            Speed = jet.Speed,
            Curvature = jet.GeodesicCurvature,
        };
    }

    private PiecewiseSeries Function(double[] joints, Func<SpherePoint, SpherePoint, double, double> of) => new(joints, Terms, x =>
    {
        double s = Math.Asin(x);
        return of(seam.At(s).Point, seam.At(Math.PI - s).Point, -Math.Cos(s));
    });

    private static double Along(SpherePoint p) => Math.Atan2(p.X, p.Z);

    private static double Across(SpherePoint p) => Math.Asin(p.Y);
}
