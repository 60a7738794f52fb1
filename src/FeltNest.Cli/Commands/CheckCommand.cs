using System.CommandLine;
using FeltNest.Layout.Check;
using FeltNest.Runs;

namespace FeltNest.Cli.Commands;

/// <summary><c>check FILE</c>: verifies a result from its file alone: layouts, roll plans, dies and panels with the second geometry engine,
/// plans of orders and other figures by working them out again.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string> file = new("FILE")
        {
            Description = "Any result file in JSON: layout.json, panel.json, roll.json with planned strikes, die.json, orders.json, "
                + "compare.json ...",
            HelpName = "FILE",
        };
        Option<string?> board = new("--board")
        {
            Description = "With a die.json: its board for the laser (board-cut.dxf), read back: slots, holes, engraving.",
            HelpName = "file",
        };
        Option<bool> json = new("--json") { Description = "Print the verdict as JSON on stdout and nothing else." };
        Option<bool> quiet = new("--quiet", "-q") { Description = "No report; the exit code and one line on a violation." };
        Command command = new(
            "check", "Verify a result from its file alone: geometry with a second engine, figures by working them out again.")
        {
            file,
            board,
            json,
            quiet,
        };
        command.SetAction((parse, stop) =>
            Task.Run(
                () => Run(
                    terminal, new CheckRun(parse.GetValue(file)!, parse.GetValue(board)), parse.GetValue(file)!, parse.GetValue(json),
                    parse.GetValue(quiet)), stop));
        return command;
    }

    private static int Run(Terminal terminal, CheckRun run, string path, bool json, bool quiet)
    {
        if (json)
        {
            terminal.Results.Write(run.Json);
        }
        else if (!quiet)
        {
            terminal.Results.Write(run.Table);
        }

        CheckVerdict verdict = run.Verdict;
        if (verdict.Passed)
        {
            return ExitCode.Done;
        }

        terminal.Say(
            $"{path}: {verdict.Violations.Count} violation{(verdict.Violations.Count == 1 ? string.Empty : "s")}: {verdict.Violations[0]}");
        return ExitCode.Violation;
    }
}
