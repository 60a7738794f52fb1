using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Cost.Sheet;

/// <summary>What a cost account needs to know of a lay.</summary>
/// <param name="RollWidthMm">Full roll width, mm.</param>
/// <param name="TrimMm">Both edge trims together, mm.</param>
/// <param name="UnusedEdgeMm">Usable width that no panel reaches, mm.</param>
/// <param name="Plies">Layers one strike cuts.</param>
/// <param name="Bands">Bands of the lay, lowest first.</param>
public sealed record LayPlan(double RollWidthMm, double TrimMm, double UnusedEdgeMm, int Plies, IReadOnlyList<CutBand> Bands)
{
    /// <summary>Panels per running metre, whole repeats.</summary>
    public double PanelsPerMetre => Bands.Sum(b => 1000 * b.Panels / b.RepeatMm);

    /// <summary>The plan of a layout.</summary>
    public static LayPlan Of(RollLayout layout)
    {
        CutBand[] bands = [.. layout.Bands.Select(band => new CutBand(
            band.Repeat.LengthMm, band.Repeat.Panels.Count, band.Repeat.Panels.Sum(p => layout.Parts[p.Part].AreaMm2),
            band.YToMm - band.YFromMm, band.Repeat.Strike?.Places.Count ?? 1))];
        (double Low, double High)[] spans = [.. layout.Bands.SelectMany(b => b.Repeat.Panels).Select(p =>
        {
            Outline turned = layout.Parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg));
            return (p.YMm + turned.MinY, p.YMm + turned.MaxY);
        })];
        return new LayPlan(
            layout.RollWidthMm, layout.Trims.TotalMm, layout.UsableWidthMm - (spans.Max(s => s.High) - spans.Min(s => s.Low)),
            layout.Rules.Plies.Count, bands);
    }
}
