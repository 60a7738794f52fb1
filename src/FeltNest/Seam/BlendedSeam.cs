using FeltNest.Ball;

namespace FeltNest.Seam;

/// <summary>A seam on the way from one seam to another: places between those of the same parameter, drawn to the sphere along their
/// radius. It keeps what symmetries both have.</summary>
/// <param name="from">Where the way begins.</param>
/// <param name="to">Where it ends.</param>
/// <param name="share">Share of the way, 0 to 1.</param>
internal sealed class BlendedSeam(SeamCurve from, SeamCurve to, double share) : SeamCurve
{
    /// <inheritdoc/>
    public override SeamFamily Family => to.Family;

    /// <inheritdoc/>
    public override double Length => SeamMeasure.Of(At).Length;

    /// <inheritdoc/>
    public override double WaistAngle => ((1 - share) * from.WaistAngle) + (share * to.WaistAngle);

    /// <inheritdoc/>
    public override double WidthAngle => SeamMeasure.Of(At).WidthAngle;

    /// <inheritdoc/>
    public override double GreatestCurvature => SeamMeasure.Of(At).GreatestCurvature;

    /// <inheritdoc/>
    public override bool IsMirrorSymmetric => from.IsMirrorSymmetric && to.IsMirrorSymmetric;

    /// <inheritdoc/>
    public override bool HasJoints => from.HasJoints || to.HasJoints;

    /// <inheritdoc/>
    public override SeamJet At(double s)
    {
        SeamJet a = from.At(s);
        SeamJet b = to.At(s);
        return SeamSeries.OnSphere(Between(a.Point, b.Point), Between(a.First, b.First), Between(a.Second, b.Second));
    }

    private SpherePoint Between(SpherePoint a, SpherePoint b) => ((1 - share) * a) + (share * b);
}
