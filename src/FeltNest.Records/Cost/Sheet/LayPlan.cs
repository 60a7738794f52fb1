using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Cost.Sheet;

/// <summary>What a cost account needs to know of a lay.</summary>
internal sealed record LayPlan
{
    /// <summary>Full roll width, mm.</summary>
    public required double RollWidthMm { get; init; }

    /// <summary>Both edge trims together, mm.</summary>
    public required double TrimMm { get; init; }

    /// <summary>Usable width that no panel reaches, mm.</summary>
    public required double UnusedEdgeMm { get; init; }

    /// <summary>Layers one strike cuts.</summary>
    public required int Plies { get; init; }

    /// <summary>Bands of the lay, lowest first.</summary>
    public required IReadOnlyList<CutBand> Bands { get; init; }

    /// <summary>Panels per running metre, whole repeats.</summary>
    public double PanelsPerMetre => Bands.Sum(b => 1000 * b.Panels / b.RepeatMm);

    /// <summary>The plan of a layout.</summary>
    public static LayPlan Of(RollLayout layout)
    {
        CutBand[] bands = [.. layout.Bands.Select(band => new CutBand
        {
            RepeatMm = band.Repeat.LengthMm,
            OverhangMm = StrikeSpan.Of(band.Repeat.Panels, layout.Parts, band.Repeat.LengthMm).LengthMm - band.Repeat.LengthMm,
            Panels = band.Repeat.Panels.Count,
            PanelAreaMm2 = band.Repeat.Panels.Sum(p => layout.Parts[p.Part].AreaMm2),
            HeightMm = band.YToMm - band.YFromMm,
            StrikesPerRepeat = band.Repeat.Strike?.Places.Count ?? 1,
        })];
        (double Low, double High)[] spans = [.. layout.Bands.SelectMany(b => b.Repeat.Panels).Select(p =>
        {
            Outline turned = layout.Parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg));
            return (p.YMm + turned.MinY, p.YMm + turned.MaxY);
        })];
        return new LayPlan
        {
            RollWidthMm = layout.RollWidthMm,
            TrimMm = layout.Trims.TotalMm,
            UnusedEdgeMm = layout.UsableWidthMm - (spans.Max(s => s.High) - spans.Min(s => s.Low)),
            Plies = layout.Rules.Plies.Count,
            Bands = bands,
        };
    }
}
