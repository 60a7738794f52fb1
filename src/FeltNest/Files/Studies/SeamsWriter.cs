using System.Globalization;
using System.Text;
using FeltNest.Design;
using FeltNest.Files.Json;
using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Files.Studies;

/// <summary>Writes seam families side by side as JSON (schema feltnest/seams/1) and as CSV.</summary>
public static class SeamsWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(SeamComparison comparison)
    {
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Seams)
            .Text("ball", comparison.Ball.Name)
            .Text("flattening", EnumWord.Of(comparison.Ball.Panel.Flattening))
            .Text("edge", EnumWord.Of(comparison.Ball.Panel.Edge))
            .Number("waistMm", comparison.WaistMm)
            .Object("limits", limits => limits
                .Number("maxStretchPercent", comparison.Ball.Felt.MaxStretchPercent)
                .Number("maxEdgeCompressionPercent", comparison.Ball.Felt.MaxEdgeCompressionPercent))
            .Object("roll", fields => RollFields.Roll(fields, comparison.Roll))
            .Flag("cutShort", comparison.CutShort)
            .Objects("seams", comparison.Entries, WriteEntry)
            .Objects(
                "unanswered", comparison.Unanswered,
                (item, none) => item.Text("curve", EnumWord.Of(none.Curve)).Text("reason", none.Reason));
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: a line of names, then one line a seam.</summary>
    public static byte[] Csv(SeamComparison comparison)
    {
        StringBuilder text = new(
            "curve,seamLengthMm,leastRadiusMm,maxStretchPercent,maxCompressionPercent,edgeMaxCompressionPercent,"
            + "stretchAllowed,edgeAllowed,energyNmm,panelAreaMm2,lengthMm,widthMm,waistMm,"
            + "panelsPerMetre,ballsPerMetre,wastePercent,metresPerThousandBalls,squareMetresPerThousandBalls,kilogramsPerThousandBalls\n");
        foreach (SeamEntry e in comparison.Entries)
        {
            (FlatPanel p, FeltUsage felt) = (e.Panel, e.Yield.PerThousandBalls);
            text.AppendJoin(',', new[]
            {
                EnumWord.Of(
                    e.Ball.Seam.Curve), Number(
                        p.Sphere.SeamLengthMm), Number(
                            p.Sphere.LeastRadiusMm), Number(p.Strain.MaxStretchPercent), Number(p.Strain.MaxCompressionPercent),
                Number(
                    p.Strain.EdgeMaxCompressionPercent), Flag(
                        e.StretchAllowed), Flag(
                            e.EdgeAllowed), Number(
                                p.Strain.EnergyNmm), Number(p.AreaMm2), Number(p.LengthMm), Number(p.WidthMm), Number(p.WaistMm),
                Number(
                    e.Yield.PanelsPerMetre), Number(
                        e.Yield.BallsPerMetre), Number(
                            e.Yield.WastePercent), Number(felt.Metres), Number(felt.SquareMetres), Number(felt.Kilograms),
            }).Append('\n');
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void WriteEntry(JsonOutput json, SeamEntry e)
    {
        json.Text("curve", EnumWord.Of(e.Ball.Seam.Curve))
            .Number("seamLengthMm", e.Panel.Sphere.SeamLengthMm)
            .Number("leastRadiusMm", e.Panel.Sphere.LeastRadiusMm)
            .Number("maxStretchPercent", e.Panel.Strain.MaxStretchPercent)
            .Number("maxCompressionPercent", e.Panel.Strain.MaxCompressionPercent)
            .Number("edgeMaxCompressionPercent", e.Panel.Strain.EdgeMaxCompressionPercent)
            .Flag("stretchAllowed", e.StretchAllowed)
            .Flag("edgeAllowed", e.EdgeAllowed)
            .Number("energyNmm", e.Panel.Strain.EnergyNmm)
            .Number("panelAreaMm2", e.Panel.AreaMm2)
            .Number("lengthMm", e.Panel.LengthMm)
            .Number("widthMm", e.Panel.WidthMm)
            .Number("waistMm", e.Panel.WaistMm);
        RollFields.Yield(json, e.Yield);
        json.Outline("outline", e.Panel.Outline);
    }

    private static string Number(double? value) =>
        value is { } number && double.IsFinite(number) ? number.ToString("R", CultureInfo.InvariantCulture) : string.Empty;

    private static string Flag(bool value) => value ? "yes" : "no";
}
