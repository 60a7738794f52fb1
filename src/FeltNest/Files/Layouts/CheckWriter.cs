using FeltNest.Files.Json;
using FeltNest.Layout.Check;

namespace FeltNest.Files.Layouts;

/// <summary>Writes what a check found (schema feltnest/check/1).</summary>
public static class CheckWriter
{
    /// <summary>The bytes.</summary>
    public static byte[] Write(LayoutVerdict verdict)
    {
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Check)
            .Flag("passed", verdict.Passed)
            .Number("leastGapMm", verdict.LeastGapMm)
            .Texts("violations", verdict.Violations)
            .Texts("notChecked", verdict.NotChecked);
        return json.Finish();
    }
}
