namespace FeltNest.Panel;

/// <summary>Greatest strains of the cover and its elastic energy.</summary>
/// <param name="MaxStretchPercent">Greatest principal stretch anywhere, 100 (sphere/flat - 1).</param>
/// <param name="MaxCompressionPercent">Greatest principal compression anywhere, 100 (1 - sphere/flat).</param>
/// <param name="EdgeMaxCompressionPercent">Greatest compression along the edge; 0 where the edge is nowhere pushed together.</param>
/// <param name="EdgeMismatchPercent">100 max |stretch(s)/stretch(pi/2 - s) - 1| along the edge, stretches as ratios sphere/flat.</param>
/// <param name="EnergyNmm">Elastic energy of one panel, N mm.</param>
public sealed record StrainSummary(
    double MaxStretchPercent, double MaxCompressionPercent, double EdgeMaxCompressionPercent, double EdgeMismatchPercent, double EnergyNmm);
