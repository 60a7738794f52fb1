using FeltNest.Design;
using FeltNest.Files.Json;
using static FeltNest.Files.Studies.StudyFields;
using static FeltNest.Files.Studies.WaistDocument;

namespace FeltNest.Files.Studies;

/// <summary>Writes a study of waists as JSON (schema feltnest/waist/1) and as CSV.</summary>
internal static class WaistWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(WaistTradeOff study)
    {
        using JsonOutput json = new(WaistDocument.Document);
        json.Text(WaistDocument.Ball, study.Ball.Name)
            .Text(WaistDocument.Flattening, EnumWord.Of(study.Ball.Panel.Flattening))
            .Text(WaistDocument.Edge, EnumWord.Of(study.Ball.Panel.Edge))
            .Object(WaistDocument.Limits, limits => limits
                .Number(LimitsFields.MaxStretchPercent, study.Ball.Felt.MaxStretchPercent)
                .Number(LimitsFields.MaxEdgeCompressionPercent, study.Ball.Felt.MaxEdgeCompressionPercent))
            .Object(WaistDocument.Roll, fields => StudyJson.Roll(fields, study.Roll))
            .Flag(WaistDocument.CutShort, study.CutShort)
            .Number(WaistDocument.BestWaistMm, study.Best?.WaistMm)
            .Number(WaistDocument.FlatFromMm, study.Flat?.FromMm)
            .Number(WaistDocument.FlatToMm, study.Flat?.ToMm)
            .Text(WaistDocument.Rule, study.Rule)
            .Text(WaistDocument.Finding, study.Finding)
            .Objects(WaistDocument.Waists, study.Points, WritePoint)
            .Objects(
                WaistDocument.Unanswered, study.Unanswered,
                (item, none) => item.Number(UnansweredFields.WaistMm, none.WaistMm).Text(UnansweredFields.Reason, none.Reason));
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: a line of names, then one line a waist.</summary>
    public static byte[] Csv(WaistTradeOff study) =>
        WaistListing.Columns.Csv(study.Points.Select(point => new WaistListing.Line(point, point == study.Best)));

    private static void WritePoint(JsonOutput json, WaistPoint p)
    {
        json.Number(WaistFields.WaistMm, p.WaistMm)
            .Number(WaistFields.MaxStretchPercent, p.Strain.MaxStretchPercent)
            .Number(WaistFields.MaxCompressionPercent, p.Strain.MaxCompressionPercent)
            .Number(WaistFields.EdgeMaxCompressionPercent, p.Strain.EdgeMaxCompressionPercent)
            .Flag(WaistFields.StretchAllowed, p.StretchAllowed)
            .Flag(WaistFields.EdgeAllowed, p.EdgeAllowed)
            .Number(WaistFields.PanelAreaMm2, p.PanelAreaMm2)
            .Number(WaistFields.SeamLengthMm, p.SeamLengthMm);
        StudyJson.Yield(json, p.Yield);
    }
}
