using FeltNest.Files.Json;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using static FeltNest.Files.Layouts.LayoutDocument;

namespace FeltNest.Files.Layouts;

/// <summary>The <c>rules</c> object of a layout file. Rules that are as usual are left out, but for the four that every file
/// carries.</summary>
internal static class LayoutRulesJson
{
    /// <summary>Writes the rules.</summary>
    internal static void Write(JsonOutput json, LayoutRules rules)
    {
        json.NumberOr(RulesFields.WarpAngle, rules.WarpAngleDeg)
            .Number(RulesFields.WarpToleranceDeg, rules.WarpToleranceDeg)
            .Text(RulesFields.Rows, EnumWord.Of(rules.Rows))
            .Flag(RulesFields.OneWay, rules.OneWay);
        if (rules.Bands > 1)
        {
            json.Number(RulesFields.Bands, rules.Bands);
        }

        if (rules.Forbidden.Count > 0)
        {
            json.Objects(
                RulesFields.Forbidden, rules.Forbidden,
                (item, strip) => item.Number(ForbiddenFields.YFromMm, strip.YFromMm).Number(ForbiddenFields.YToMm, strip.YToMm));
        }

        if (rules.Die is { } die)
        {
            json.Object(
                RulesFields.Die,
                item => item
                    .Number(DieFields.MostPanels, die.MostPanels)
                    .Number(DieFields.BedLengthMm, die.BedLengthMm)
                    .Number(DieFields.BedWidthMm, die.BedWidthMm));
        }

        if (rules.LeastRepeatMm > 0)
        {
            json.Number(RulesFields.LeastRepeatMm, rules.LeastRepeatMm);
        }

        if (rules.Plies != Plies.One)
        {
            json.Object(
                RulesFields.Plies,
                item => item.Number(PlyFields.Count, rules.Plies.Count).Flag(PlyFields.FaceToFace, rules.Plies.FaceToFace));
        }
    }

    /// <summary>Reads the rules; where the file states no number of bands, as many as it has are allowed.</summary>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    internal static LayoutRules Read(JsonFields top, int bands)
    {
        JsonFields rules = top.Object(LayoutDocument.Rules);
        return new LayoutRules(
            rules.NumberOr(RulesFields.WarpAngle), rules.Number(RulesFields.WarpToleranceDeg), rules.Word(RulesFields.Rows),
            rules.Flag(RulesFields.OneWay))
        {
            Bands = rules.OptionalWhole(RulesFields.Bands) ?? bands,
            Forbidden = [.. rules.OptionalObjects(RulesFields.Forbidden).Select(Strip)],
            Die = rules.OptionalObject(RulesFields.Die) is { } die ? Die(die) : null,
            LeastRepeatMm = rules.OptionalNumber(RulesFields.LeastRepeatMm) ?? 0,
            Plies = rules.OptionalObject(RulesFields.Plies) is { } plies ? Layers(plies) : Plies.One,
        };
    }

    private static ForbiddenStrip Strip(JsonFields item) =>
        new() { YFromMm = item.Number(ForbiddenFields.YFromMm), YToMm = item.Number(ForbiddenFields.YToMm) };

    private static DieLimit Die(JsonFields die) => new()
    {
        MostPanels = die.OptionalWhole(DieFields.MostPanels),
        BedLengthMm = die.OptionalNumber(DieFields.BedLengthMm),
        BedWidthMm = die.OptionalNumber(DieFields.BedWidthMm),
    };

    private static Plies Layers(JsonFields plies) => new(plies.Whole(PlyFields.Count), plies.Flag(PlyFields.FaceToFace));
}
