using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Layout.Scan;

namespace FeltNest.Cost.Compare;

/// <summary>The rows of a kept die that fit a width, as one band.</summary>
internal static class DroppedRows
{
    /// <summary>The lay of those rows on a roll.</summary>
    public static LayPlan On(RollLayout die, DropWidth rows, double widthMm)
    {
        LayoutRepeat repeat = die.Bands[0].Repeat;
        int panels = (int)Math.Round(rows.PanelsPerMetre * repeat.LengthMm / 1000);
        CutBand band = new()
        {
            RepeatMm = repeat.LengthMm,
            OverhangMm = StrikeSpan.Of(repeat.Panels, die.Parts, repeat.LengthMm).LengthMm - repeat.LengthMm,
            Panels = panels,
            PanelAreaMm2 = panels * repeat.Panels.Average(p => die.Parts[p.Part].AreaMm2),
            HeightMm = widthMm - die.Trims.TotalMm,
            StrikesPerRepeat = repeat.Strike?.Places.Count ?? 1,
        };
        return new LayPlan
        {
            RollWidthMm = widthMm,
            TrimMm = die.Trims.TotalMm,
            UnusedEdgeMm = widthMm - rows.LeastWidthMm,
            Plies = die.Rules.Plies.Count,
            Bands = [band],
        };
    }
}
