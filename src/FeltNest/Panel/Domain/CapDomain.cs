namespace FeltNest.Panel.Domain;

/// <summary>A round cap: the one piece whose flattening is also known from ordinary differential equations, kept to prove the
/// solver.</summary>
internal sealed class CapDomain(double radius) : PanelDomain
{
    /// <summary>Angular radius of the cap, radians.</summary>
    public double Radius => radius;

    /// <inheritdoc/>
    public override bool IsMirrorSymmetric => true;

    /// <inheritdoc/>
    public override DomainJet At(double x, double y)
    {
        // Below this distance from the pole the quotients are taken from their series.
        const double near = 1e-3;
        double r = Math.Sqrt((x * x) + (y * y));
        double a = radius * r;
        (double sin, double cos) = Math.SinCos(a);
        double reach = r < near ? radius * (1 - (a * a / 6)) : sin / r;
        double bend = r < near ? -Math.Pow(radius, 3) / 3 * (1 - (a * a / 10)) : ((radius * cos) - reach) / (r * r);
        return new DomainJet(
            new(reach * x, reach * y, cos),
            new(reach + (bend * x * x), bend * x * y, -radius * reach * x),
            new(bend * x * y, reach + (bend * y * y), -radius * reach * y));
    }

    /// <inheritdoc/>
    public override DomainEdge EdgeAt(double s) => new()
    {
        Angle = s - (Math.PI / 2),
        AngleSlope = 1,
        Speed = Math.Sin(radius),
        Curvature = 1 / Math.Tan(radius),
    };
}
