using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>One waist of a study: its panel, the strains of its felt, and what a roll yields of it.</summary>
internal sealed record WaistPoint
{
    /// <summary>Waist of the seam on the fitted sphere, mm.</summary>
    public required double WaistMm { get; init; }

    /// <summary>Greatest strains of the panel.</summary>
    public required StrainSummary Strain { get; init; }

    /// <summary>Area of the cut panel, mm2.</summary>
    public required double PanelAreaMm2 { get; init; }

    /// <summary>Length of the seam on the fitted sphere, mm.</summary>
    public required double SeamLengthMm { get; init; }

    /// <summary>Yield of the layout on the study's roll.</summary>
    public required YieldFigures Yield { get; init; }

    /// <summary>Whether the greatest stretch stays within the felt's limit.</summary>
    public required bool StretchAllowed { get; init; }

    /// <summary>Whether the edge is pushed together no more than the felt's limit.</summary>
    public required bool EdgeAllowed { get; init; }

    /// <summary>Whether both limits are kept.</summary>
    public bool Allowed => StretchAllowed && EdgeAllowed;
}
