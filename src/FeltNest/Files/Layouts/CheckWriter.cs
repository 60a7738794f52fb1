using FeltNest.Files.Json;
using FeltNest.Layout.Check;

namespace FeltNest.Files.Layouts;

/// <summary>Writes what a check found (schema feltnest/check/1).</summary>
internal static class CheckWriter
{
    /// <summary>The bytes.</summary>
    public static byte[] Write(CheckVerdict verdict)
    {
        using JsonOutput json = new(CheckDocument.Document);
        json.Flag(CheckDocument.Passed, verdict.Passed)
            .Number(CheckDocument.LeastGapMm, verdict.LeastGapMm)
            .Texts(CheckDocument.Violations, verdict.Violations)
            .Texts(CheckDocument.NotChecked, verdict.NotChecked);
        return json.Finish();
    }
}
