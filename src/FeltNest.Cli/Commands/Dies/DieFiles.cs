using FeltNest.Die;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Dies;

namespace FeltNest.Cli.Commands.Dies;

/// <summary>Files that a die writes.</summary>
internal static class DieFiles
{
    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["die.json", "die.dxf", "cavity.dxf", "board.dxf", "die.pdf", .. DieSheets.Names.SelectMany(s => new[] { $"{s}.svg", $"{s}.png" })];

    /// <summary>Their contents.</summary>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(DieDesign design)
    {
        IReadOnlyList<Sheet> drawn = DieSheets.Draw(design);
        return
        [
            ("die.json", DieWriter.Write(design)), ("die.dxf", DieDxf.Gang(design)), ("cavity.dxf", DieDxf.Cavity(design)), ("board.dxf", DieDxf.Board(design)), ("die.pdf", PdfWriter.Write(drawn)),
            .. drawn.Zip(DieSheets.Names).SelectMany(pair => new[] { ($"{pair.Second}.svg", SvgWriter.Write(pair.First)), ($"{pair.Second}.png", PngWriter.Write(pair.First)) }),
        ];
    }
}
