namespace FeltNest.Panel.Wrap;

/// <summary>A flat piece whose edge is drawn to the seam.</summary>
/// <param name="EnergyNmm">Elastic energy, N mm.</param>
/// <param name="MaxStretchPercent">Greatest principal stretch, 100 (sphere/flat - 1).</param>
/// <param name="MaxCompressionPercent">Greatest principal compression, 100 (1 - sphere/flat).</param>
/// <param name="EdgePullNPerMm">Greatest pull on the edge that closing needs, N for a mm of flat edge: across the edge and along it taken
/// together.</param>
/// <param name="EdgeOffSeamMm">Greatest distance of the edge from where it is held, mm.</param>
/// <param name="Residual">Greatest violation left of the equilibrium, at unit radius and stiffness.</param>
public sealed record EdgeHeldWrap(
    double EnergyNmm, double MaxStretchPercent, double MaxCompressionPercent, double EdgePullNPerMm, double EdgeOffSeamMm, double Residual);
