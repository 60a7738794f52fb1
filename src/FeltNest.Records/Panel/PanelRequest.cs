using FeltNest.Ball;
using FeltNest.Panel.Felt;
using FeltNest.Seam;

namespace FeltNest.Panel;

/// <summary>What a flat panel is computed from.</summary>
/// <param name="RadiusMm">Radius of the fitted sphere, mm.</param>
/// <param name="Seam">The seam on the unit sphere.</param>
/// <param name="Method">How the panel is made flat.</param>
/// <param name="Edge">Edge rule of the elastic method.</param>
/// <param name="Law">Stiffness of the felt in the panel's axes, N/mm.</param>
/// <param name="SeamGapMm">Gap left between two panels, mm.</param>
/// <param name="ShrinkWarp">Shrinkage along the warp when cured, as a part of the cut length.</param>
/// <param name="ShrinkWeft">Shrinkage along the weft.</param>
/// <param name="WarpAngle">Angle from the warp to the panel's +u, radians; null where any angle serves.</param>
public sealed record PanelRequest(
    double RadiusMm,
    SeamCurve Seam,
    FlatteningMethod Method,
    EdgeRule Edge,
    FeltLaw Law,
    double SeamGapMm,
    double ShrinkWarp,
    double ShrinkWeft,
    double? WarpAngle)
{
    /// <summary>Greatest compression along the edge, as a part of flat length, 0 to below 1: binds the mated elastic panel. Null for
    /// none.</summary>
    public double? EdgeLimit { get; init; }

    /// <summary>Stretch along the warp when the felt is pulled on, as a part of the cut length.</summary>
    public double StretchWarp { get; init; }

    /// <summary>Stretch along the weft when the felt is pulled on.</summary>
    public double StretchWeft { get; init; }

    /// <summary>How far outside the panel wanted the die cuts, mm, below 0 inside.</summary>
    public double DieOffsetMm { get; init; }
}
