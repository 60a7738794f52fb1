namespace FeltNest.Layout;

/// <summary>One question to the layout engine.</summary>
/// <param name="Part">The part to lay.</param>
/// <param name="RollWidthMm">Width of the roll, mm.</param>
/// <param name="EdgeMm">Edge trim on each side, mm.</param>
/// <param name="GapMm">Least distance between any two cut edges, mm; 0 is a common cut.</param>
/// <param name="Rules">What the shop allows.</param>
/// <param name="Effort">Counted work, 1 to 1000.</param>
/// <param name="Seed">Seed of the random part of the search.</param>
public sealed record LayoutRequest(LayoutPart Part, double RollWidthMm, double EdgeMm, double GapMm, LayoutRules Rules, int Effort, int Seed)
{
    /// <summary>Roll width less both edge trims, mm.</summary>
    public double UsableWidthMm => RollWidthMm - (2 * EdgeMm);
}
