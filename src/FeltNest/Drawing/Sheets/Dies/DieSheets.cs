using FeltNest.Die;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>All sheets of a die, in their order: gang, cavity, edge section, template, order.</summary>
public static class DieSheets
{
    /// <summary>Their names: every different part has a cavity and a template of its own.</summary>
    /// <param name="parts">How many different parts the die cuts.</param>
    public static IReadOnlyList<string> Names(int parts) => ["die", .. Each("cavity", parts), "section", .. Each("template", parts), "order"];

    /// <summary>Draws them.</summary>
    public static IReadOnlyList<Sheet> Draw(DieDesign design)
    {
        IReadOnlyList<int> parts = design.Parts;
        int count = Names(parts.Count).Count, before = parts.Count + 2;
        return
        [
            GangSheet.Draw(design, 1, count), .. parts.Select((part, i) => CavitySheet.Draw(design, part, 2 + i, count)), SectionSheet.Draw(design, before, count),
            .. parts.Select((part, i) => TemplateSheet.Draw(design, part, before + 1 + i, count)), OrderSheet.Draw(design, count, count),
        ];
    }

    private static IEnumerable<string> Each(string name, int parts) => Enumerable.Range(0, parts).Select(i => CutParts.Named(name, CutParts.Letter(i, parts)));
}
