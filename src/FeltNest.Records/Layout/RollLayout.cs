using FeltNest.Layout.Limits;

namespace FeltNest.Layout;

/// <summary>Parts laid over a roll width. Roll frame: x along the feed (the warp), y across from the lower selvedge, seen from the nap
/// side.</summary>
/// <param name="Parts">Parts used.</param>
/// <param name="RollWidthMm">Width of the roll, mm.</param>
/// <param name="Trims">Edge trims.</param>
/// <param name="GapMm">Gap promised, mm.</param>
/// <param name="Rules">Rules kept.</param>
/// <param name="Bands">Bands over the width, lowest first: one, over the usable width, where the whole lay shares a repeat.</param>
/// <param name="Search">How it was found.</param>
public sealed record RollLayout(
    IReadOnlyList<LayoutPart> Parts, double RollWidthMm, EdgeTrims Trims, double GapMm, LayoutRules Rules, IReadOnlyList<LayoutBand> Bands,
    SearchRecord Search)
{
    /// <summary>Roll width less both edge trims, mm.</summary>
    public double UsableWidthMm => RollWidthMm - Trims.TotalMm;

    /// <summary>Panels per metre of roll, all bands together.</summary>
    public double PanelsPerMetre => Bands.Sum(band => 1000 * band.Repeat.Panels.Count / band.Repeat.LengthMm);
}
