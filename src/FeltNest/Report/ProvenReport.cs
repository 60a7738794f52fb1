using System.Globalization;
using FeltNest.Ball;
using FeltNest.Panel.Proven;

namespace FeltNest.Report;

/// <summary>The table a fit to a proven panel prints.</summary>
internal static class ProvenReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    /// <param name="outline">Name of the outline.</param>
    /// <param name="fit">What was found.</param>
    public static string Text(string outline, ProvenFit fit)
    {
        TextTable table = new();
        table.Heading($"{fit.Ball.Name} fitted to {outline}");
        ValueLines(table, fit);
        ProvenDeviation greatest = fit.Greatest;
        table.Heading("Measured outline against the fitted panel")
            .Line("off, root mean square", fit.RmsMm, "0.000", "mm")
            .Line(
                "off, greatest", greatest.OffMm, "+0.000;-0.000;0.000", "mm",
                FormattableString.Invariant($"at ({greatest.Place.X:0.0}, {greatest.Place.Y:0.0}) mm; above 0 the outline is larger"))
            .Line(
                "length, width, waist",
                FormattableString.Invariant($"{fit.Panel.LengthMm:0.00}, {fit.Panel.WidthMm:0.00}, {fit.Panel.WaistMm:0.00} mm"),
                "of the fitted panel")
            .Line("outline turned by", fit.TurnDeg, "0.00", "deg", "to lie on the panel");
        FamilyLines(table, fit);
        table.Note(string.Empty)
            .Note(FormattableString.Invariant($"{Capital(fit.Weakest)}."))
            .Note(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"+/- says how far a value can go, the others following, before the outline changes by {fit.TellableMm:0.00} mm "
                        + $"rms: nearer outlines are taken to be alike."));
        if (fit.Doubt is { } doubt)
        {
            table.Note($"{Capital(DoubtWords.Of(doubt))}.");
        }

        return table.ToString();
    }

    private static void ValueLines(TextTable table, ProvenFit fit)
    {
        foreach (ProvenValue value in fit.Values)
        {
            string unit = value.Unit.Length > 0 ? " " + value.Unit : string.Empty;
            table.Line(
                value.Name, value.Value, "0.000", value.Unit,
                FormattableString.Invariant(
                    $"+/- {value.Spread:0.###}{unit}, {value.Field}{(value.AtBound is { } end ? "; " + end : string.Empty)}"));
        }

        foreach (ProvenValue value in fit.Held)
        {
            table.Line(value.Name, value.Value, "0.000", value.Unit, $"held, {value.Field}");
        }

        if (!fit.ShowsLimit && !fit.Held.Any(value => value.Name == "edge limit") && fit.Ball.Panel.Edge == EdgeRule.Mated)
        {
            table.Line(
                "edge limit", "not shown",
                FormattableString.Invariant($"the outline shows no edge limit below {fit.Panel.Strain.EdgeMaxCompressionPercent:0.00} %"));
        }
    }

    private static void FamilyLines(TextTable table, ProvenFit fit)
    {
        if (fit.Families.Count > 0)
        {
            table.Heading("Seam families, the nearest first");
            foreach (ProvenFamily family in fit.Families)
            {
                string taken = family.Curve == fit.Ball.Seam.Curve ? "taken; " : string.Empty;
                table.Line(
                    EnumWord.Of(family.Curve), family.RmsMm, "0.000", "mm rms",
                    FormattableString.Invariant($"{taken}neutral layer {family.NeutralLayer:0.000}, waist {family.WaistMm:0.00} mm"));
            }
        }
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
