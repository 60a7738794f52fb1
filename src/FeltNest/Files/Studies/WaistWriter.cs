using System.Globalization;
using System.Text;
using FeltNest.Design;
using FeltNest.Files.Json;
using FeltNest.Yield;
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
            .Text(WaistDocument.Rule, study.Rule)
            .Text(WaistDocument.Finding, study.Finding)
            .Objects(WaistDocument.Waists, study.Points, WritePoint)
            .Objects(
                WaistDocument.Unanswered, study.Unanswered,
                (item, none) => item.Number(UnansweredFields.WaistMm, none.WaistMm).Text(UnansweredFields.Reason, none.Reason));
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: a line of names, then one line a waist.</summary>
    public static byte[] Csv(WaistTradeOff study)
    {
        StringBuilder text = new(
            "waistMm,maxStretchPercent,maxCompressionPercent,edgeMaxCompressionPercent,"
            + "stretchAllowed,edgeAllowed,panelAreaMm2,seamLengthMm,"
            + "panelsPerMetre,ballsPerMetre,wastePercent,metresPerThousandBalls,squareMetresPerThousandBalls,"
            + "kilogramsPerThousandBalls,best\n");
        foreach (WaistPoint p in study.Points)
        {
            FeltUsage felt = p.Yield.PerThousandBalls;
            text.AppendJoin(',', new[]
            {
                Number(
                    p.WaistMm), Number(
                        p.Strain.MaxStretchPercent), Number(p.Strain.MaxCompressionPercent), Number(p.Strain.EdgeMaxCompressionPercent),
                Flag(
                    p.StretchAllowed), Flag(
                        p.EdgeAllowed), Number(
                            p.PanelAreaMm2), Number(p.SeamLengthMm), Number(p.Yield.PanelsPerMetre), Number(p.Yield.BallsPerMetre),
                Number(p.Yield.WastePercent), Number(felt.Metres), Number(felt.SquareMetres), Number(felt.Kilograms), Flag(p == study.Best),
            }).Append('\n');
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

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

    private static string Number(double? value) =>
        value is { } number && double.IsFinite(number) ? number.ToString("R", CultureInfo.InvariantCulture) : string.Empty;

    private static string Flag(bool value) => value ? "yes" : "no";
}
