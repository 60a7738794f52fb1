using FeltNest.Die;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>All sheets of a die, in their order: gang, cavity, edge section, template, order.</summary>
public static class DieSheets
{
    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["die", "cavity", "section", "template", "order"];

    /// <summary>Draws them.</summary>
    public static IReadOnlyList<Sheet> Draw(DieDesign design)
    {
        int count = Names.Count;
        return [GangSheet.Draw(design, 1, count), CavitySheet.Draw(design, 2, count), SectionSheet.Draw(design, 3, count), TemplateSheet.Draw(design, 4, count), OrderSheet.Draw(design, 5, count)];
    }
}
