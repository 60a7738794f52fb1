namespace FeltNest.Panel;

/// <summary>What the fitter feels of a panel: where its edge comes to lie when nothing pulls it to the seam. Before allowances, so a panel
/// of no strain would close without a gap.</summary>
public sealed record PanelFit
{
    /// <summary>Greatest gap between the edges of the two panels, mm; null where they do not face each other.</summary>
    public required double? LargestGapMm { get; init; }

    /// <summary>Greatest overlap, mm; null likewise.</summary>
    public required double? LargestOverlapMm { get; init; }

    /// <summary>Elastic energy of one panel, N mm.</summary>
    public required double EnergyNmm { get; init; }
}
