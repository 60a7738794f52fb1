using FeltNest.Die;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>All sheets of a die, in their order: gang, cavity, edge section, template, rule, stock, order.</summary>
internal static class DieSheets
{
    /// <summary>Their names: every different part has a cavity and a template of its own.</summary>
    /// <param name="parts">How many different parts the die cuts.</param>
    public static IReadOnlyList<string> Names(int parts) =>
        ["die", .. Each("cavity", parts), "section", .. Each("template", parts), .. Each("rule", parts), "rule-stock", "order"];

    /// <summary>Draws them.</summary>
    /// <exception cref="OperationCanceledException">Broken off between two of them.</exception>
    public static IReadOnlyList<Sheet> Draw(DieDesign design, CancellationToken stop = default)
    {
        IReadOnlyList<int> parts = design.Parts;
        int count = Names(parts.Count).Count;
        int before = parts.Count + 2;
        IEnumerable<Func<Sheet>> sheets =
        [
            () => GangSheet.Draw(design, 1, count),
            .. parts.Select((part, i) => (Func<Sheet>)(() => CavitySheet.Draw(design, part, 2 + i, count))),
            () => SectionSheet.Draw(design, before, count),
            .. parts.Select((part, i) => (Func<Sheet>)(() => TemplateSheet.Draw(design, part, before + 1 + i, count))),
            .. parts.Select((part, i) => (Func<Sheet>)(() => RuleSheet.Draw(design, part, before + parts.Count + 1 + i, count))),
            () => RuleStockSheet.Draw(design, count - 1, count),
            () => OrderSheet.Draw(design, count, count),
        ];
        List<Sheet> drawn = [];
        foreach (Func<Sheet> sheet in sheets)
        {
            stop.ThrowIfCancellationRequested();
            drawn.Add(sheet());
        }

        return drawn;
    }

    private static IEnumerable<string> Each(string name, int parts) =>
        Enumerable.Range(0, parts).Select(i => CutParts.Named(name, CutParts.Letter(i, parts)));
}
