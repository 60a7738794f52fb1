namespace FeltNest.Panel;

/// <summary>What the fitter feels of a panel: where its edge comes to lie when nothing pulls it to the seam.</summary>
public sealed record PanelFit
{
    /// <summary>Greatest gap between the edges of the two panels before allowances, mm: over and above the gap left for the adhesive. A
    /// panel of no strain would close without one. Null where the edges do not face each other.</summary>
    public required double? LargestGapMm { get; init; }

    /// <summary>Greatest overlap before allowances, mm; null likewise.</summary>
    public required double? LargestOverlapMm { get; init; }

    /// <summary>Elastic energy of one panel, N mm.</summary>
    public required double EnergyNmm { get; init; }

    /// <summary>Gap and overlap of the panels as cut, at fitting.</summary>
    public required FitGap AsCut { get; init; }

    /// <summary>Gap and overlap after the felt has shrunk in the cure.</summary>
    public required FitGap AfterCure { get; init; }
}
