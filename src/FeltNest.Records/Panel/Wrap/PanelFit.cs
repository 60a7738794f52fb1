namespace FeltNest.Panel.Wrap;

/// <summary>What the fitter feels of a panel: where its edge comes to lie when nothing pulls it to the seam. Before allowances, so a panel
/// of no strain would close without a gap.</summary>
/// <param name="LargestGapMm">Greatest gap between the edges of the two panels, mm; not a number where they do not face each other.</param>
/// <param name="LargestOverlapMm">Greatest overlap, mm; not a number likewise.</param>
/// <param name="EnergyNmm">Elastic energy of one panel, N mm.</param>
public sealed record PanelFit(double LargestGapMm, double LargestOverlapMm, double EnergyNmm);
