using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Die.Check;
using FeltNest.Die.Proof;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Report.Dies;

namespace FeltNest.Cli.Commands.Dies;

/// <summary><c>die DIE --readings READINGS</c>: how a die wears and when to rule it again.</summary>
internal static class LifeRun
{
    private static readonly string[] Names = ["life.json", "life.svg", "life.png"];

    /// <summary>Works out the life.</summary>
    public static int Run(Terminal terminal, ParseResult parse, string path, string readings, string? newer, CommonOptions common)
    {
        Answer answer = new(terminal, parse, common);
        DieInput die = DieReader.Read(path);
        IReadOnlyList<DieReading> read = ReadingsReader.Read(readings, die.Die.Cavities.Count);
        string? superseded = newer is null ? null : Superseding(die, DieReader.Read(newer));
        ResultFolder results = new(
            parse.GetValue(common.Out) ?? DefaultFolder.OfMeasured(path, "life", readings), parse.GetValue(common.Force));
        results.Prepare(answer.Named(Names));
        DieLife life = DieLife.Of(die.Die.Name, die.Die.Revision, die.PanelProfileMm, read, die.Wear?.LifeStrikes, superseded);
        Sheet sheet = LifeSheet.Draw(life);
        return answer.Give(
            results, [(Names[0], MeasuredWriter.Life(life, die)), (Names[1], SvgWriter.Write(sheet)), (Names[2], PngWriter.Write(sheet))],
            MeasuredReport.Text(life),
            MeasuredReport.Warnings(life).Select(w => $"warning: {w}"));
    }

    // A die is superseded by another revision, or by another edge under the same name.
    private static string? Superseding(DieInput old, DieInput newer)
    {
        bool changed = newer.Die.Revision != old.Die.Revision || !SameLay.Are(old.Layout.Layout, newer.Layout.Layout);
        return changed ? newer.Die.Revision is { } revision ? $"{newer.Die.Name} revision {revision}" : newer.Die.Name : null;
    }
}
