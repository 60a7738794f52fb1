using FeltNest.Design;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Cli.Commands;

/// <summary>The set of files a layout is written as.</summary>
internal static class LayoutFiles
{
    /// <summary>Names, the JSON first.</summary>
    public static IReadOnlyList<string> Names { get; } = ["layout.json", "layout.svg", "layout.png"];

    /// <summary>Contents under those names; what the reader of the outline assumed, and the strains of a panel laid off its design, are
    /// kept in the JSON.</summary>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(
        RollLayout layout, YieldFigures yields, IReadOnlyList<string> assumed, IReadOnlyList<LaidStrain> laid)
    {
        Sheet sheet = LayoutSheet.Draw(layout, yields);
        return
        [
            (Names[0], LayoutWriter.Write(layout, yields, assumed, laid)), (Names[1], SvgWriter.Write(sheet)),
            (Names[2], PngWriter.Write(sheet)),
        ];
    }
}
