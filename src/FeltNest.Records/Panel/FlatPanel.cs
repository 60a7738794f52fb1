using FeltNest.Geometry;
using FeltNest.Panel.Elastic;

namespace FeltNest.Panel;

/// <summary>The flat panel as it is to be cut, with what flattening did to the felt. Frame: origin at the flat image of the panel's pole,
/// +u along the flat chord between the two seam tips, seen from the nap side; mm.</summary>
public sealed record FlatPanel
{
    /// <summary>The cut outline as tangent arcs: the true curve.</summary>
    public required ArcOutline Arcs { get; init; }

    /// <summary>Polygon that contains <see cref="Arcs"/>, at most 0.01 mm outside it.</summary>
    public required Outline Outline { get; init; }

    /// <summary>Greatest distance found between the arcs and the computed curve, mm.</summary>
    public required double ArcDeviationMm { get; init; }

    /// <summary>Extent along u of the cut panel.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Extent along v.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Width at u = 0.</summary>
    public required double WaistMm { get; init; }

    /// <summary>What it covers.</summary>
    public required SphereFigures Sphere { get; init; }

    /// <summary>Edge before allowances, with its seam parameter.</summary>
    public required IReadOnlyList<EdgePoint> EdgeMap { get; init; }

    /// <summary>Greatest strains and the energy.</summary>
    public required StrainSummary Strain { get; init; }

    /// <summary>Allowances in the order applied.</summary>
    public required IReadOnlyList<PanelAllowance> Allowances { get; init; }

    /// <summary>Strain over the panel, for the picture.</summary>
    public required StrainField Field { get; init; }

    /// <summary>How it was computed.</summary>
    public required PanelSolve Solve { get; init; }

    /// <summary>What the edge take-up limit did; null where none was set, and for all but the mated elastic panel.</summary>
    public EdgeLimitReport? EdgeLimit { get; init; }

    /// <summary>Where the edge comes to lie with nothing pulling it; null where that was not computed or has no answer.</summary>
    public PanelFit? Fit { get; init; }

    /// <summary>Area of the cut panel, mm2, from the arcs.</summary>
    public double AreaMm2 => Arcs.Area;

    /// <summary>Length of the cut edge, mm, from the arcs.</summary>
    public double PerimeterMm => Arcs.Perimeter;
}
