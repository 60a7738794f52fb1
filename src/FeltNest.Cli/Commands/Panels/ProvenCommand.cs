using System.CommandLine;
using FeltNest.Ball;
using FeltNest.Cli.Options;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Outlines;
using FeltNest.Files.Panels;
using FeltNest.Panel.Proven;
using FeltNest.Report;

namespace FeltNest.Cli.Commands.Panels;

/// <summary><c>panel BALL --proven OUTLINE</c>: the ball's values that reproduce a measured panel best.</summary>
internal static class ProvenCommand
{
    private static readonly string[] Names = ["proven.json", "proven.svg", "proven.png"];

    /// <summary>Fits the ball and writes the results.</summary>
    public static int Run(Terminal terminal, ParseResult parse, string ballPath, BallSpec ball, string outlinePath, CommonOptions common)
    {
        Answer answer = new(terminal, parse, common);
        ImportedOutline outline = PartReader.Read(outlinePath).Outline
            ?? throw new InputException(outlinePath, null, "is a ball specification; --proven takes a flat outline or a panel.json");
        ResultFolder results = new(
            parse.GetValue(common.Out) ?? DefaultFolder.OfOutline(ballPath, "proven", outlinePath), parse.GetValue(common.Force));
        results.Prepare(answer.Named(Names));
        foreach (string note in outline.Notes)
        {
            terminal.Say($"{outlinePath}: {note}");
        }

        ProvenFit fit = ProvenPanel.Fit(ball, WrapCommand.Curve(outline));
        Sheet sheet = ProvenSheet.Draw(outline.Name, fit);
        byte[] content = ProvenWriter.Write(outline.Name, fit);
        return answer.Give(
            results, [(Names[0], content), (Names[1], SvgWriter.Write(sheet)), (Names[2], PngWriter.Write(sheet))],
            ProvenReport.Text(outline.Name, fit),
            fit.Values
                .Where(value => value.AtBound is not null)
                .Select(value => $"warning: {value.Name} stands {value.AtBound}: the outline would be met better beyond it"));
    }
}
