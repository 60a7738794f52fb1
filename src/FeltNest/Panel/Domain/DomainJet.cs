using FeltNest.Seam;

namespace FeltNest.Panel.Domain;

/// <summary>A place on the unit sphere with its derivatives by the disc's coordinates.</summary>
/// <param name="Point">Place.</param>
/// <param name="Dx">Derivative by x.</param>
/// <param name="Dy">Derivative by y.</param>
internal readonly record struct DomainJet(SpherePoint Point, SpherePoint Dx, SpherePoint Dy)
{
    /// <summary>The metric the sphere lends to the disc.</summary>
    public Metric Metric => new(Dx.Dot(Dx), Dx.Dot(Dy), Dy.Dot(Dy));
}
