using FeltNest.Design;
using FeltNest.Files.Csv;
using static FeltNest.Files.Studies.SeamsDocument;
using static FeltNest.Files.Studies.StudyFields;

namespace FeltNest.Files.Studies;

/// <summary>Columns of <c>seams.csv</c>: a line a seam.</summary>
internal static class SeamsListing
{
    public static readonly ResultColumns<SeamEntry> Columns = new ResultColumns<SeamEntry>("seams.csv")
        .Text(SeamFields.Curve, e => EnumWord.Of(e.Ball.Seam.Curve))
        .Number(SeamFields.SeamLengthMm, e => e.Panel.Sphere.SeamLengthMm)
        .Number(SeamFields.LeastRadiusMm, e => e.Panel.Sphere.LeastRadiusMm)
        .Number(SeamFields.MaxStretchPercent, e => e.Panel.Strain.MaxStretchPercent)
        .Number(SeamFields.MaxCompressionPercent, e => e.Panel.Strain.MaxCompressionPercent)
        .Number(SeamFields.EdgeMaxCompressionPercent, e => e.Panel.Strain.EdgeMaxCompressionPercent)
        .Flag(SeamFields.StretchAllowed.Name, e => e.StretchAllowed, SeamFields.StretchAllowed.Meaning)
        .Flag(SeamFields.EdgeAllowed.Name, e => e.EdgeAllowed, SeamFields.EdgeAllowed.Meaning)
        .Number(SeamFields.EnergyNmm, e => e.Panel.Strain.EnergyNmm)
        .Number(SeamFields.PanelAreaMm2, e => e.Panel.AreaMm2)
        .Number(SeamFields.LengthMm, e => e.Panel.LengthMm)
        .Number(SeamFields.WidthMm, e => e.Panel.WidthMm)
        .Number(SeamFields.WaistMm, e => e.Panel.WaistMm)
        .Number(YieldFields.PanelsPerMetre, e => e.Yield.PanelsPerMetre)
        .Number(YieldFields.BallsPerMetre, e => e.Yield.BallsPerMetre)
        .Number(YieldFields.WastePercent, e => e.Yield.WastePercent)
        .Number(FeltColumns.Metres, e => e.Yield.PerThousandBalls.Metres)
        .Number(FeltColumns.SquareMetres, e => e.Yield.PerThousandBalls.SquareMetres)
        .Number(FeltColumns.Kilograms, e => e.Yield.PerThousandBalls.Kilograms);
}
