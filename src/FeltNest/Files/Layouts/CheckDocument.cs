using FeltNest.Files.Fields;

namespace FeltNest.Files.Layouts;

/// <summary>Verdict of a check: every field of <c>feltnest/check/1</c>.</summary>
internal static class CheckDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Check, Title = "Verdict of a check", Fields = Fields };

    public static readonly FlagField Passed = Fields.Add(new FlagField("passed", "whether nothing was found"));
    public static readonly NumberField LeastGapMm = Fields.Add(
        new NumberField("leastGapMm", "least distance between any two cut edges; null where it is not measured") { OrNull = true });
    public static readonly TextsField Violations = Fields.Add(new TextsField("violations", "what was found, one line each"));
    public static readonly TextsField NotChecked = Fields.Add(
        new TextsField("notChecked", "fields of the file that were not worked out again, by name"));
}
