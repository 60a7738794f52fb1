using FeltNest.Ball.Ranges;
using FeltNest.Files.Json;
using FeltNest.Layout;
using FeltNest.Layout.Limits;

namespace FeltNest.Files.Layouts;

/// <summary>The <c>rules</c> object of a layout file. Rules that are as usual are left out, but for the four that every file
/// carries.</summary>
internal static class RulesFields
{
    private static readonly FieldRange Tolerance = new("rules.warpToleranceDeg", 0, 90, "degrees", "90 already allows every angle");

    /// <summary>Writes the rules.</summary>
    internal static void Write(JsonOutput json, LayoutRules rules)
    {
        json.NumberOr("warpAngle", rules.WarpAngleDeg, "free")
            .Number("warpToleranceDeg", rules.WarpToleranceDeg)
            .Text("rows", EnumWord.Of(rules.Rows))
            .Flag("oneWay", rules.OneWay);
        if (rules.Bands > 1)
        {
            json.Number("bands", rules.Bands);
        }

        if (rules.Forbidden.Count > 0)
        {
            json.Objects("forbidden", rules.Forbidden, (item, strip) => item.Number("yFromMm", strip.YFromMm).Number("yToMm", strip.YToMm));
        }

        if (rules.Die is { } die)
        {
            json.Object(
                "die",
                item => item
                    .Number("mostPanels", die.MostPanels)
                    .Number("bedLengthMm", die.BedLengthMm)
                    .Number("bedWidthMm", die.BedWidthMm));
        }

        if (rules.LeastRepeatMm > 0)
        {
            json.Number("leastRepeatMm", rules.LeastRepeatMm);
        }

        if (rules.Plies != Plies.One)
        {
            json.Object("plies", item => item.Number("count", rules.Plies.Count).Flag("faceToFace", rules.Plies.FaceToFace));
        }
    }

    /// <summary>Reads the rules; where the file states no number of bands, as many as it has are allowed.</summary>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    internal static LayoutRules Read(JsonFields top, int bands)
    {
        JsonFields rules = top.Object(
            "rules", "warpAngle", "warpToleranceDeg", "rows", "oneWay", "bands", "forbidden", "die", "leastRepeatMm", "plies");
        return new LayoutRules(
            rules.NumberOr("warpAngle", "free"), Tolerance.Checked(rules.Number("warpToleranceDeg")), rules.Word<RowRule>("rows"),
            rules.Flag("oneWay"))
        {
            Bands = rules.Has("bands") ? Whole(rules, "bands", LayoutLimits.MostBands) : bands,
            Forbidden = rules.Has("forbidden")
                ?
                [
                    .. rules
                        .Objects("forbidden", "yFromMm", "yToMm")
                        .Select(s => new ForbiddenStrip(s.Number("yFromMm"), s.Number("yToMm"))),
                ] : [],
            Die = rules.Has("die") ? Die(rules.Object("die", "mostPanels", "bedLengthMm", "bedWidthMm")) : null,
            LeastRepeatMm = rules.OptionalNumber("leastRepeatMm") ?? 0,
            Plies = rules.Has("plies") ? Layers(rules.Object("plies", "count", "faceToFace")) : Plies.One,
        };
    }

    private static DieLimit Die(JsonFields die) => new(
        die.Has("mostPanels") ? Whole(die, "mostPanels", LayoutLimits.MostDiePanels) : null, die.OptionalNumber("bedLengthMm"),
        die.OptionalNumber("bedWidthMm"));

    private static Plies Layers(JsonFields plies) => new(Whole(plies, "count", LayoutLimits.MostPlies), plies.Flag("faceToFace"));

    private static int Whole(JsonFields fields, string name, int most)
    {
        int value = fields.Whole(name);
        return value >= 1 && value <= most ? value : throw fields.Fault(name, $"{value} is outside 1 to {most}");
    }
}
