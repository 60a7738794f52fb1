using FeltNest.Geometry;
using FeltNest.Seam;

namespace FeltNest.Panel;

/// <summary>Strain at one place of the flat panel, before allowances.</summary>
/// <param name="Place">Place in the panel frame, mm.</param>
/// <param name="MajorPercent">Greater principal stretch, 100 (sphere/flat - 1): negative where all directions are pushed together.</param>
/// <param name="MinorPercent">Lesser principal stretch, per cent.</param>
/// <param name="MajorAngle">Direction of the greater one in the panel frame, radians.</param>
/// <param name="Fitted">Where the place comes to lie on the unit sphere.</param>
public readonly record struct StrainSample(Point2 Place, double MajorPercent, double MinorPercent, double MajorAngle, SpherePoint Fitted);
