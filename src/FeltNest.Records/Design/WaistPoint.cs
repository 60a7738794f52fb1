using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>One waist of a study: its panel, the strains of its felt, and what a roll yields of it.</summary>
/// <param name="WaistMm">Waist of the seam on the fitted sphere, mm.</param>
/// <param name="Strain">Greatest strains of the panel.</param>
/// <param name="PanelAreaMm2">Area of the cut panel, mm2.</param>
/// <param name="SeamLengthMm">Length of the seam on the fitted sphere, mm.</param>
/// <param name="Yield">Yield of the layout on the study's roll.</param>
/// <param name="StretchAllowed">Whether the greatest stretch stays within the felt's limit.</param>
/// <param name="EdgeAllowed">Whether the edge is pushed together no more than the felt's limit.</param>
public sealed record WaistPoint(
    double WaistMm, StrainSummary Strain, double PanelAreaMm2, double SeamLengthMm, YieldFigures Yield, bool StretchAllowed,
    bool EdgeAllowed)
{
    /// <summary>Whether both limits are kept.</summary>
    public bool Allowed => StretchAllowed && EdgeAllowed;
}
