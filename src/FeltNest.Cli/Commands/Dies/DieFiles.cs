using FeltNest.Die;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Dies;

namespace FeltNest.Cli.Commands.Dies;

/// <summary>Files that a die writes.</summary>
internal static class DieFiles
{
    private static readonly string[] Sheets = ["die", "cavity", "section", "template", "order"];

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["die.json", "die.dxf", "cavity.dxf", "board.dxf", "die.pdf", .. Sheets.SelectMany(s => new[] { $"{s}.svg", $"{s}.png" })];

    /// <summary>Their contents.</summary>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(DieDesign design)
    {
        int count = Sheets.Length;
        Sheet[] drawn = [GangSheet.Draw(design, 1, count), CavitySheet.Draw(design, 2, count), SectionSheet.Draw(design, 3, count), TemplateSheet.Draw(design, 4, count), OrderSheet.Draw(design, 5, count)];
        return
        [
            ("die.json", DieWriter.Write(design)), ("die.dxf", DieDxf.Gang(design)), ("cavity.dxf", DieDxf.Cavity(design)), ("board.dxf", DieDxf.Board(design)), ("die.pdf", PdfWriter.Write(drawn)),
            .. drawn.Zip(Sheets).SelectMany(pair => new[] { ($"{pair.Second}.svg", SvgWriter.Write(pair.First)), ($"{pair.Second}.png", PngWriter.Write(pair.First)) }),
        ];
    }
}
