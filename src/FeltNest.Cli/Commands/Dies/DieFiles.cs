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
    /// <param name="parts">How many different parts the die cuts.</param>
    public static IReadOnlyList<string> Names(int parts) =>
    [
        "die.json", "die.dxf", .. Enumerable.Range(0, parts).Select(i => Cavity(i, parts)), "board.dxf", "die.pdf",
        .. DieSheets.Names(parts).SelectMany(s => new[] { $"{s}.svg", $"{s}.png" }),
    ];

    /// <summary>Their contents.</summary>
    /// <exception cref="OperationCanceledException">Broken off between two of them.</exception>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(DieDesign design, CancellationToken stop)
    {
        IReadOnlyList<Sheet> drawn = DieSheets.Draw(design, stop);
        IReadOnlyList<int> parts = design.Parts;
        IEnumerable<(string Name, Func<byte[]> Content)> files =
        [
            ("die.json", () => DieWriter.Write(design)),
            ("die.dxf", () => DieDxf.Gang(design)),
            .. parts.Select((part, i) => (Cavity(i, parts.Count), (Func<byte[]>)(() => DieDxf.Cavity(design, part)))),
            ("board.dxf", () => DieDxf.Board(design)),
            ("die.pdf", () => PdfWriter.Write(drawn)),
            .. drawn.Zip(DieSheets.Names(parts.Count)).SelectMany(pair => new (string, Func<byte[]>)[]
            {
                ($"{pair.Second}.svg", () => SvgWriter.Write(pair.First)),
                ($"{pair.Second}.png", () => PngWriter.Write(pair.First)),
            }),
        ];
        List<(string, byte[])> made = [];
        foreach ((string name, Func<byte[]> content) in files)
        {
            stop.ThrowIfCancellationRequested();
            made.Add((name, content()));
        }

        return made;
    }

    private static string Cavity(int place, int count) => $"{CutParts.Named("cavity", CutParts.Letter(place, count))}.dxf";
}
