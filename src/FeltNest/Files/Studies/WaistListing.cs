using FeltNest.Design;
using FeltNest.Files.Csv;
using static FeltNest.Files.Studies.StudyFields;
using static FeltNest.Files.Studies.WaistDocument;

namespace FeltNest.Files.Studies;

/// <summary>Columns of <c>waist.csv</c>: a line a waist.</summary>
internal static class WaistListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("waist.csv")
        .Number(WaistFields.WaistMm, l => l.Point.WaistMm)
        .Number(WaistFields.MaxStretchPercent, l => l.Point.Strain.MaxStretchPercent)
        .Number(WaistFields.MaxCompressionPercent, l => l.Point.Strain.MaxCompressionPercent)
        .Number(WaistFields.EdgeMaxCompressionPercent, l => l.Point.Strain.EdgeMaxCompressionPercent)
        .Flag(WaistFields.StretchAllowed.Name, l => l.Point.StretchAllowed, WaistFields.StretchAllowed.Meaning)
        .Flag(WaistFields.EdgeAllowed.Name, l => l.Point.EdgeAllowed, WaistFields.EdgeAllowed.Meaning)
        .Number(WaistFields.PanelAreaMm2, l => l.Point.PanelAreaMm2)
        .Number(WaistFields.SeamLengthMm, l => l.Point.SeamLengthMm)
        .Number(YieldFields.PanelsPerMetre, l => l.Point.Yield.PanelsPerMetre)
        .Number(YieldFields.BallsPerMetre, l => l.Point.Yield.BallsPerMetre)
        .Number(YieldFields.WastePercent, l => l.Point.Yield.WastePercent)
        .Number(FeltColumns.Metres, l => l.Point.Yield.PerThousandBalls.Metres)
        .Number(FeltColumns.SquareMetres, l => l.Point.Yield.PerThousandBalls.SquareMetres)
        .Number(FeltColumns.Kilograms, l => l.Point.Yield.PerThousandBalls.Kilograms)
        .Flag("best", l => l.IsBest, "whether it is the waist marked");

    /// <summary>A waist, and whether it is the one marked.</summary>
    internal readonly record struct Line(WaistPoint Point, bool IsBest);
}
