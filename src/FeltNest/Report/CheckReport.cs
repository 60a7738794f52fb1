using FeltNest.Layout.Check;

namespace FeltNest.Report;

/// <summary>What a check prints.</summary>
internal static class CheckReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    /// <param name="path">The file.</param>
    /// <param name="gapMm">Gap the layout promises, mm; null where the file holds no layout.</param>
    /// <param name="verdict">What was found.</param>
    public static string Text(string path, double? gapMm, CheckVerdict verdict)
    {
        TextTable table = new();
        table.Heading($"Check of {path}").Line("verdict", verdict.Passed ? "passed" : "violated");
        if (gapMm is { } gap)
        {
            table.Line("gap promised", gap, "0.####", "mm").Line("least gap found", verdict.LeastGapMm, "0.0000", "mm");
        }

        foreach (string violation in verdict.Violations)
        {
            table.Note($"- {violation}");
        }

        if (verdict.NotChecked.Count > 0)
        {
            table.Note($"not checked: {string.Join(", ", verdict.NotChecked)}");
        }

        return table.ToString();
    }
}
