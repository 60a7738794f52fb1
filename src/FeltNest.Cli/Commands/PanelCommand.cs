using System.CommandLine;
using System.Text;
using FeltNest.Ball.Mass;
using FeltNest.Cli.Options;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Panel;
using FeltNest.Report;

namespace FeltNest.Cli.Commands;

/// <summary><c>panel BALL</c>: the flat panel, its strains, and the ball against the rules.</summary>
internal static class PanelCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string> ball = new("BALL") { Description = "Ball specification (JSON).", HelpName = "BALL" };
        Command command = new("panel", "The flat panel of a ball: outline, strains, fit to the rules.") { ball };
        CommonOptions common = new(command);
        command.SetAction((parse, stop) => Task.Run(
            () => Run(terminal, parse.GetValue(ball)!, parse.GetValue(common.Out), parse.GetValue(common.Force), parse.GetValue(common.Json), parse.GetValue(common.Quiet)),
            stop));
        return command;
    }

    private static int Run(Terminal terminal, string path, string? folder, bool force, bool json, bool quiet)
    {
        BallInput input = BallReader.Read(path);
        ResultFolder results = new(folder ?? DefaultFolder.OfPanel(path), force);
        results.Prepare(PanelFiles.Names);
        FlatPanel panel = PanelFlattener.Flatten(input.Ball);
        IReadOnlyList<(string Name, byte[] Content)> files = PanelFiles.Make(input.Ball, panel);
        IReadOnlyList<string> written = results.Write(files);
        if (json)
        {
            terminal.Results.Write(Encoding.UTF8.GetString(files[0].Content));
        }
        else if (!quiet)
        {
            terminal.Results.Write(PanelReport.Text(input.Ball, panel, input.Assumed));
        }

        foreach (string warning in PanelWarnings.Of(input.Ball, panel, MassBudget.Of(input.Ball, panel.AreaMm2)))
        {
            terminal.Say($"warning: {warning}");
        }

        if (!quiet)
        {
            terminal.Say($"wrote {string.Join(", ", written)}");
        }

        return ExitCode.Done;
    }
}
