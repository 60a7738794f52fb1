using System.Globalization;
using System.Text;
using FeltNest.Design;
using FeltNest.Files.Json;
using FeltNest.Yield;

namespace FeltNest.Files.Studies;

/// <summary>Writes a study of waists as JSON (schema feltnest/waist/1) and as CSV.</summary>
public static class WaistWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(WaistTradeOff study)
    {
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Waist)
            .Text("ball", study.Ball.Name)
            .Text("flattening", EnumWord.Of(study.Ball.Panel.Flattening))
            .Text("edge", EnumWord.Of(study.Ball.Panel.Edge))
            .Object("limits", limits => limits
                .Number("maxStretchPercent", study.Ball.Felt.MaxStretchPercent)
                .Number("maxEdgeCompressionPercent", study.Ball.Felt.MaxEdgeCompressionPercent))
            .Object("roll", fields => RollFields.Roll(fields, study.Roll))
            .Flag("cutShort", study.CutShort)
            .Number("bestWaistMm", study.Best?.WaistMm)
            .Text("rule", study.Rule)
            .Text("finding", study.Finding)
            .Objects("waists", study.Points, WritePoint)
            .Objects("unanswered", study.Unanswered, (item, none) => item.Number("waistMm", none.WaistMm).Text("reason", none.Reason));
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
        json.Number("waistMm", p.WaistMm)
            .Number("maxStretchPercent", p.Strain.MaxStretchPercent)
            .Number("maxCompressionPercent", p.Strain.MaxCompressionPercent)
            .Number("edgeMaxCompressionPercent", p.Strain.EdgeMaxCompressionPercent)
            .Flag("stretchAllowed", p.StretchAllowed)
            .Flag("edgeAllowed", p.EdgeAllowed)
            .Number("panelAreaMm2", p.PanelAreaMm2)
            .Number("seamLengthMm", p.SeamLengthMm);
        RollFields.Yield(json, p.Yield);
    }

    private static string Number(double? value) =>
        value is { } number && double.IsFinite(number) ? number.ToString("R", CultureInfo.InvariantCulture) : string.Empty;

    private static string Flag(bool value) => value ? "yes" : "no";
}
