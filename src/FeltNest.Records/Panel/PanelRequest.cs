using FeltNest.Ball;
using FeltNest.Panel.Felt;
using FeltNest.Seam;

namespace FeltNest.Panel;

/// <summary>What a flat panel is computed from.</summary>
internal sealed record PanelRequest
{
    /// <summary>Radius of the fitted sphere, mm.</summary>
    public required double RadiusMm { get; init; }

    /// <summary>The seam on the unit sphere.</summary>
    public required SeamCurve Seam { get; init; }

    /// <summary>How the panel is made flat.</summary>
    public required FlatteningMethod Method { get; init; }

    /// <summary>Edge rule of the elastic method.</summary>
    public required EdgeRule Edge { get; init; }

    /// <summary>Stiffness of the felt in the panel's axes, N/mm.</summary>
    public required FeltLaw Law { get; init; }

    /// <summary>Gap left between two panels, mm.</summary>
    public required double SeamGapMm { get; init; }

    /// <summary>Shrinkage along the warp when cured, as a part of the cut length.</summary>
    public required double ShrinkWarp { get; init; }

    /// <summary>Shrinkage along the weft.</summary>
    public required double ShrinkWeft { get; init; }

    /// <summary>Angle from the warp to the panel's +u, radians; null where any angle serves.</summary>
    public required double? WarpAngle { get; init; }

    /// <summary>Greatest compression along the edge, as a part of flat length, 0 to below 1: binds the mated elastic panel. Null for
    /// none.</summary>
    public double? EdgeLimit { get; init; }

    /// <summary>Stretch along the warp when the felt is pulled on, as a part of the cut length.</summary>
    public double StretchWarp { get; init; }

    /// <summary>Stretch along the weft when the felt is pulled on.</summary>
    public double StretchWeft { get; init; }

    /// <summary>How far outside the panel wanted the die cuts, mm, below 0 inside.</summary>
    public double DieOffsetMm { get; init; }

    /// <summary>What a trial wrap corrects of the cut edge, after all allowances.</summary>
    public IReadOnlyList<EdgeWave> Correction { get; init; } = [];
}
