using FeltNest.Design;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using static FeltNest.Files.Studies.SeamDesignDocument;
using static FeltNest.Files.Studies.StudyFields;

namespace FeltNest.Files.Studies;

/// <summary>Columns of <c>seam-design.csv</c>: for each mark a line for the plane and one for the roll.</summary>
internal static class SeamDesignListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("seam-design.csv")
        .Number(MarkFields.StretchLimitPercent, l => l.Mark.StretchLimitPercent)
        .Text(MarkFields.Curve, l => EnumWord.Of(l.Mark.Curve))
        .Text(new TextField("leastIn", "`plane` or `roll`: where the seam has the least felt"), l => l.LeastIn)
        .Number(ChoiceFields.SeamWaistMm, l => l.Choice.Panel.Sphere.WaistMm)
        .Number(ChoiceFields.WarpAngleDeg, l => l.Choice.Ball.Panel.WarpAngleDeg)
        .Number(ChoiceFields.SeamLengthMm, l => l.Choice.Panel.Sphere.SeamLengthMm)
        .Number(ChoiceFields.LeastRadiusMm, l => l.Choice.Panel.Sphere.LeastRadiusMm)
        .Number(ChoiceFields.LeastRunMm, l => l.Choice.LeastRunMm)
        .Number(ChoiceFields.MaxStretchPercent, l => l.Choice.Panel.Strain.MaxStretchPercent)
        .Number(ChoiceFields.MaxCompressionPercent, l => l.Choice.Panel.Strain.MaxCompressionPercent)
        .Number(ChoiceFields.EdgeMaxCompressionPercent, l => l.Choice.Panel.Strain.EdgeMaxCompressionPercent)
        .Number(ChoiceFields.EdgeHeldPercent, l => l.Choice.Panel.EdgeLimit?.SharePercent ?? 0)
        .Number(ChoiceFields.LargestGapMm, l => l.Choice.Panel.Fit?.LargestGapMm)
        .Number(ChoiceFields.PanelAreaMm2, l => l.Choice.Panel.AreaMm2)
        .Number(ChoiceFields.PlaneSquareMetres, l => l.Choice.PlaneSquareMetres)
        .Number(YieldFields.PanelsPerMetre, l => l.Choice.Yield.PanelsPerMetre)
        .Number(YieldFields.WastePercent, l => l.Choice.Yield.WastePercent)
        .Number(FeltColumns.Metres, l => l.Choice.Yield.PerThousandBalls.Metres)
        .Number(FeltColumns.SquareMetres, l => l.Choice.Yield.PerThousandBalls.SquareMetres)
        .Number(FeltColumns.Kilograms, l => l.Choice.Yield.PerThousandBalls.Kilograms);

    /// <summary>A mark's seam for the plane or for the roll.</summary>
    internal readonly record struct Line(SeamMark Mark, string LeastIn, SeamChoice Choice);
}
