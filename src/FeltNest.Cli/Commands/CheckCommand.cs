using System.CommandLine;
using System.Text;
using FeltNest.Die.Check;
using FeltNest.Files;
using FeltNest.Files.Layouts;
using FeltNest.Layout.Check;
using FeltNest.Report;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Yield;

namespace FeltNest.Cli.Commands;

/// <summary><c>check FILE</c>: verifies a layout, a roll plan or a die from its file alone with the second geometry engine, and works a
/// plan of orders out again.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string> file = new("FILE")
        {
            Description = "A layout.json, a roll.json with planned strikes, a die.json, or an orders.json.",
            HelpName = "FILE",
        };
        Option<bool> json = new("--json") { Description = "Print the verdict as JSON on stdout and nothing else." };
        Option<bool> quiet = new("--quiet", "-q") { Description = "No report; the exit code and one line on a violation." };
        Command command = new(
            "check", "Verify a layout, a roll plan or a die again with a second geometry engine, or work a plan of orders out again.")
        {
            file,
            json,
            quiet,
        };
        command.SetAction((parse, stop) =>
            Task.Run(() => Run(terminal, parse.GetValue(file)!, parse.GetValue(json), parse.GetValue(quiet)), stop));
        return command;
    }

    private static int Run(Terminal terminal, string path, bool json, bool quiet)
    {
        CheckedInput read = CheckedReader.Read(path);
        LayoutVerdict verdict =
            read.Orders is { } orders ? new LayoutVerdict(double.NaN, 0, OrderPlanCheck.Violations(orders)) : Geometry(read.Layout!, read);
        if (json)
        {
            terminal.Results.Write(Encoding.UTF8.GetString(CheckWriter.Write(verdict)));
        }
        else if (!quiet)
        {
            terminal.Results.Write(CheckReport.Text(path, read.Layout?.Layout.GapMm, verdict));
        }

        if (verdict.Passed)
        {
            return ExitCode.Done;
        }

        terminal.Say(
            $"{path}: {verdict.Violations.Count} violation{(verdict.Violations.Count == 1 ? string.Empty : "s")}: {verdict.Violations[0]}");
        return ExitCode.Violation;
    }

    private static LayoutVerdict Geometry(LayoutInput input, CheckedInput read)
    {
        LayoutVerdict geometry = read.Plan is { } plan ? RollPlanCheck.Verify(input.Layout, plan.Roll, plan.Plan)
            : read.Die is { } die ? DieCheck.Verify(input.Layout, die.Die)
            : LayoutCheck.Verify(input.Layout);
        return geometry with { Violations = [.. geometry.Violations, .. StatedYield.Contradictions(input, YieldAccount.Of(input.Layout))] };
    }
}
