namespace FeltNest.Panel.Domain;

/// <summary>A piece of the unit sphere as the smooth image of the unit disc: (0, 0) goes to the pole, +x towards the tip at s =
/// pi/2.</summary>
/// <remarks>The half-turn about the pole is the half-turn of the disc: only that may be relied on, and mirror symmetry where it is
/// stated.</remarks>
internal abstract class PanelDomain
{
    /// <summary>Whether the piece equals its mirror image in both axes.</summary>
    public abstract bool IsMirrorSymmetric { get; }

    /// <summary>Image of a point of the disc with its derivatives.</summary>
    public abstract DomainJet At(double x, double y);

    /// <summary>The place on the disc's rim that belongs to a seam parameter.</summary>
    public abstract DomainEdge EdgeAt(double s);
}
