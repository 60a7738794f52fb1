using FeltNest.Design;
using FeltNest.Files.Json;
using static FeltNest.Files.Studies.SeamsDocument;
using static FeltNest.Files.Studies.StudyFields;

namespace FeltNest.Files.Studies;

/// <summary>Writes seam families side by side as JSON (schema feltnest/seams/1) and as CSV.</summary>
internal static class SeamsWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(SeamComparison comparison)
    {
        using JsonOutput json = new(SeamsDocument.Document);
        json.Text(SeamsDocument.Ball, comparison.Ball.Name)
            .Text(SeamsDocument.Flattening, EnumWord.Of(comparison.Ball.Panel.Flattening))
            .Text(SeamsDocument.Edge, EnumWord.Of(comparison.Ball.Panel.Edge))
            .Number(SeamsDocument.WaistMm, comparison.WaistMm)
            .Object(SeamsDocument.Limits, limits => limits
                .Number(LimitsFields.MaxStretchPercent, comparison.Ball.Felt.MaxStretchPercent)
                .Number(LimitsFields.MaxEdgeCompressionPercent, comparison.Ball.Felt.MaxEdgeCompressionPercent))
            .Object(SeamsDocument.Roll, fields => StudyJson.Roll(fields, comparison.Roll))
            .Flag(SeamsDocument.CutShort, comparison.CutShort)
            .Objects(SeamsDocument.Seams, comparison.Entries, WriteEntry)
            .Objects(
                SeamsDocument.Unanswered, comparison.Unanswered,
                (item, none) => item.Text(UnansweredFields.Curve, EnumWord.Of(none.Curve)).Text(UnansweredFields.Reason, none.Reason));
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: a line of names, then one line a seam.</summary>
    public static byte[] Csv(SeamComparison comparison) => SeamsListing.Columns.Csv(comparison.Entries);

    private static void WriteEntry(JsonOutput json, SeamEntry e)
    {
        json.Text(SeamFields.Curve, EnumWord.Of(e.Ball.Seam.Curve))
            .Number(SeamFields.SeamLengthMm, e.Panel.Sphere.SeamLengthMm)
            .Number(SeamFields.LeastRadiusMm, e.Panel.Sphere.LeastRadiusMm)
            .Number(SeamFields.MaxStretchPercent, e.Panel.Strain.MaxStretchPercent)
            .Number(SeamFields.MaxCompressionPercent, e.Panel.Strain.MaxCompressionPercent)
            .Number(SeamFields.EdgeMaxCompressionPercent, e.Panel.Strain.EdgeMaxCompressionPercent)
            .Flag(SeamFields.StretchAllowed, e.StretchAllowed)
            .Flag(SeamFields.EdgeAllowed, e.EdgeAllowed)
            .Number(SeamFields.EnergyNmm, e.Panel.Strain.EnergyNmm)
            .Number(SeamFields.PanelAreaMm2, e.Panel.AreaMm2)
            .Number(SeamFields.LengthMm, e.Panel.LengthMm)
            .Number(SeamFields.WidthMm, e.Panel.WidthMm)
            .Number(SeamFields.WaistMm, e.Panel.WaistMm);
        StudyJson.Yield(json, e.Yield);
        json.Outline(SeamFields.Outline, e.Panel.Outline);
    }
}
