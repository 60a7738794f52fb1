using FeltNest.Geometry;
using FeltNest.Seam;

namespace FeltNest.Panel;

/// <summary>Strain at one place of the flat panel, before allowances.</summary>
public readonly record struct StrainSample
{
    /// <summary>Place in the panel frame, mm.</summary>
    public required Point2 Place { get; init; }

    /// <summary>Greater principal stretch, 100 (sphere/flat - 1): negative where all directions are pushed together.</summary>
    public required double MajorPercent { get; init; }

    /// <summary>Lesser principal stretch, per cent.</summary>
    public required double MinorPercent { get; init; }

    /// <summary>Direction of the greater one in the panel frame, radians.</summary>
    public required double MajorAngle { get; init; }

    /// <summary>Where the place comes to lie on the unit sphere.</summary>
    public required SpherePoint Fitted { get; init; }
}
