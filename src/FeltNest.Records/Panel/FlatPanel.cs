using FeltNest.Geometry;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Wrap;

namespace FeltNest.Panel;

/// <summary>The flat panel as it is to be cut, with what flattening did to the felt. Frame: origin at the flat image of the panel's pole,
/// +u along the flat chord between the two seam tips, seen from the nap side; mm.</summary>
/// <param name="Arcs">The cut outline as tangent arcs: the true curve.</param>
/// <param name="Outline">Polygon that contains <paramref name="Arcs"/>, at most 0.01 mm outside it.</param>
/// <param name="ArcDeviationMm">Greatest distance found between the arcs and the computed curve, mm.</param>
/// <param name="LengthMm">Extent along u of the cut panel.</param>
/// <param name="WidthMm">Extent along v.</param>
/// <param name="WaistMm">Width at u = 0.</param>
/// <param name="Sphere">What it covers.</param>
/// <param name="EdgeMap">Edge before allowances, with its seam parameter.</param>
/// <param name="Strain">Greatest strains and the energy.</param>
/// <param name="Allowances">Allowances in the order applied.</param>
/// <param name="Field">Strain over the panel, for the picture.</param>
/// <param name="Solve">How it was computed.</param>
public sealed record FlatPanel(
    ArcOutline Arcs,
    Outline Outline,
    double ArcDeviationMm,
    double LengthMm,
    double WidthMm,
    double WaistMm,
    SphereFigures Sphere,
    IReadOnlyList<EdgePoint> EdgeMap,
    StrainSummary Strain,
    IReadOnlyList<PanelAllowance> Allowances,
    StrainField Field,
    PanelSolve Solve)
{
    /// <summary>What the edge take-up limit did; null where none was set, and for all but the mated elastic panel.</summary>
    public EdgeLimitReport? EdgeLimit { get; init; }

    /// <summary>Where the edge comes to lie with nothing pulling it; null where that was not computed or has no answer.</summary>
    public PanelFit? Fit { get; init; }

    /// <summary>Area of the cut panel, mm2, from the arcs.</summary>
    public double AreaMm2 => Arcs.Area;

    /// <summary>Length of the cut edge, mm, from the arcs.</summary>
    public double PerimeterMm => Arcs.Perimeter;
}
