using FeltNest.Ball;

namespace FeltNest.Seam;

/// <summary>The seam of a two-panel cover, on the unit sphere in the frame of the panel that holds the pole (0, 0, 1).</summary>
/// <remarks><para>The parameter s runs over 2 pi: 0 and pi at the panel's waist (y = 0 side first: s = 0 lies at negative y), pi/2 at the
/// tip on +x. It grows counter-clockwise seen from outside. The curve is kept by the half-turn about z (s to s + pi) and changed end for
/// end by the half-turn about the axis (1, -1, 0), which lays the second panel: s meets pi/2 - s.</para>
/// <para>Only these two symmetries may be relied on; <see cref="IsMirrorSymmetric"/> says whether the panel has two mirror planes as
/// well.</para></remarks>
internal abstract class SeamCurve
{
    /// <summary>Family the curve belongs to.</summary>
    public abstract SeamFamily Family { get; }

    /// <summary>Length of the whole seam.</summary>
    public abstract double Length { get; }

    /// <summary>Great-circle arc across the waist, radians.</summary>
    public abstract double WaistAngle { get; }

    /// <summary>Great-circle arc from tip to tip through the pole, radians.</summary>
    public virtual double LengthAngle => (2 * Math.PI) - WaistAngle;

    /// <summary>Greatest width measured along great circles across the long axis, radians.</summary>
    public abstract double WidthAngle { get; }

    /// <summary>Greatest amount of geodesic curvature anywhere on the seam.</summary>
    public abstract double GreatestCurvature { get; }

    /// <summary>Area of one panel: half the sphere, as both panels are the same part.</summary>
    public static double PanelArea => 2 * Math.PI;

    /// <summary>Whether the panel equals its mirror image in the long axis.</summary>
    public abstract bool IsMirrorSymmetric { get; }

    /// <summary>Whether the curvature jumps at s = pi/4, 3 pi/4, 5 pi/4 and 7 pi/4; everywhere else, and without joints there too, the
    /// curve is smooth.</summary>
    public virtual bool HasJoints => false;

    /// <summary>Place and derivatives at a parameter.</summary>
    public abstract SeamJet At(double s);
}
