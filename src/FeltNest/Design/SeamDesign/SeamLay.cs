using FeltNest.Layout.Polish;

namespace FeltNest.Design.SeamDesign;

/// <summary>How the panel is laid while its seam is designed: the lattice of the endless plane, or parallel rows over a width.</summary>
/// <param name="Model">The lay; its parameters are those of the present panel.</param>
/// <param name="PanelsPerCost">What the model's cost buys: in the plane a cell holds one panel; a metre of pitch as many as there are
/// rows.</param>
/// <param name="WidthMm">What a mm of pitch costs: the roll's width, or 1 in the plane, whose cost is an area already.</param>
internal sealed record SeamLay(PoseModel Model, double PanelsPerCost, double WidthMm)
{
    /// <summary>Felt for one panel, mm2.</summary>
    public double FeltMm2 => Model.Cost(Model.Parameters) * WidthMm / PanelsPerCost;
}
