using FeltNest.Layout;
using FeltNest.Layout.Check;

namespace FeltNest.Report;

/// <summary>What a check prints.</summary>
public static class CheckReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(string path, RollLayout layout, LayoutVerdict verdict)
    {
        TextTable table = new();
        table.Heading($"Check of {path}")
            .Line("verdict", verdict.Passed ? "passed" : "violated")
            .Line("gap promised", layout.GapMm, "0.####", "mm")
            .Line("least gap found", verdict.LeastGapMm, "0.0000", "mm");
        foreach (string violation in verdict.Violations)
        {
            table.Note($"- {violation}");
        }

        return table.ToString();
    }
}
