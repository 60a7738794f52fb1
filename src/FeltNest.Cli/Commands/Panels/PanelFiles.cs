using FeltNest.Ball;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Panels;
using FeltNest.Panel;

namespace FeltNest.Cli.Commands.Panels;

/// <summary>The set of files a panel is written as.</summary>
internal static class PanelFiles
{
    /// <summary>Names, the JSON first.</summary>
    public static IReadOnlyList<string> Names { get; } = ["panel.json", "panel.svg", "panel.png"];

    /// <summary>Contents under those names.</summary>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(BallSpec ball, FlatPanel panel)
    {
        Sheet sheet = PanelSheet.Draw(ball, panel);
        return [(Names[0], PanelWriter.Write(ball, panel)), (Names[1], SvgWriter.Write(sheet)), (Names[2], PngWriter.Write(sheet))];
    }
}
