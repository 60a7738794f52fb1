using FeltNest.Layout.Limits;

namespace FeltNest.Layout;

/// <summary>One question to the layout engine.</summary>
/// <param name="Part">The part to lay.</param>
/// <param name="RollWidthMm">Width of the roll, mm.</param>
/// <param name="Trims">Edge trims.</param>
/// <param name="GapMm">Least distance between any two cut edges, mm; 0 is a common cut.</param>
/// <param name="Rules">What the shop allows.</param>
/// <param name="Effort">Counted work, 1 to 1000.</param>
/// <param name="Seed">Seed of the random part of the search.</param>
public sealed record LayoutRequest(
    LayoutPart Part, double RollWidthMm, EdgeTrims Trims, double GapMm, LayoutRules Rules, int Effort, int Seed)
{
    /// <summary>A second part that shares the width, or null.</summary>
    public SecondPart? Second { get; init; }

    /// <summary>All parts, the first one first.</summary>
    public IReadOnlyList<LayoutPart> Parts => Second is null ? [Part] : [Part, Second.Part];

    /// <summary>Roll width less both edge trims, mm.</summary>
    public double UsableWidthMm => RollWidthMm - Trims.TotalMm;

    /// <summary>Lower and upper side of the usable width, from the lower selvedge, mm.</summary>
    public (double Low, double High) Usable => (Trims.LowerMm, RollWidthMm - Trims.UpperMm);
}
