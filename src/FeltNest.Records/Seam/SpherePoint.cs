namespace FeltNest.Seam;

/// <summary>A point of the unit sphere, or a vector at one, in the panel's own frame: z through the panel's pole, x towards one seam tip,
/// seen from outside with y to the left of x.</summary>
public readonly record struct SpherePoint(double X, double Y, double Z)
{
    /// <summary>Distance from the centre.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>Sum by components.</summary>
    public static SpherePoint operator +(SpherePoint a, SpherePoint b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference by components.</summary>
    public static SpherePoint operator -(SpherePoint a, SpherePoint b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The vector scaled.</summary>
    public static SpherePoint operator *(double factor, SpherePoint a) => new(factor * a.X, factor * a.Y, factor * a.Z);

    /// <summary>Scalar product.</summary>
    public double Dot(SpherePoint other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product.</summary>
    public SpherePoint Cross(SpherePoint other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));
}
