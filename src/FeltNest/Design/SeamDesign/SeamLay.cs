using FeltNest.Layout.Polish;

namespace FeltNest.Design.SeamDesign;

/// <summary>How the panel is laid while its seam is designed: the lattice of the endless plane, or parallel rows over a width.</summary>
internal sealed record SeamLay
{
    /// <summary>The lay; its parameters are those of the present panel.</summary>
    public required PoseModel Model { get; init; }

    /// <summary>What the model's cost buys: in the plane a cell holds one panel; a length of pitch as many as there are rows.</summary>
    public required double PanelsPerCost { get; init; }

    /// <summary>What a mm of pitch costs: the roll's width, or 1 in the plane, whose cost is an area already.</summary>
    public required double WidthMm { get; init; }

    /// <summary>The parameter that is the panels' angle to the warp, where they must lie as designed; null where their tilt is
    /// free.</summary>
    public required int? Warp { get; init; }

    /// <summary>Felt for one panel, mm2.</summary>
    public double FeltMm2 => Model.Cost(Model.Parameters) * WidthMm / PanelsPerCost;
}
