using System.CommandLine;
using System.Text;
using FeltNest.Die.Check;
using FeltNest.Files;
using FeltNest.Files.Check;
using FeltNest.Files.Layouts;
using FeltNest.Layout.Check;
using FeltNest.Report;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Yield;

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
        Option<bool> json = new("--json") { Description = "Print the verdict as JSON on stdout and nothing else." };
        Option<bool> quiet = new("--quiet", "-q") { Description = "No report; the exit code and one line on a violation." };
        Command command = new(
            "check", "Verify a result from its file alone: geometry with a second engine, figures by working them out again.")
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
        LayoutVerdict verdict = Judged(read);
        verdict = verdict with { NotChecked = read.File.NotSeen };
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

    private static LayoutVerdict Judged(CheckedInput read)
    {
        if (read.Layout is { } layout)
        {
            return Geometry(layout, read);
        }

        if (read.Orders is { } orders)
        {
            return new LayoutVerdict(double.NaN, 0, OrderPlanCheck.Violations(orders));
        }

        FigureCheck.Run(read.File);
        return new LayoutVerdict(double.NaN, 0, read.File.Violations);
    }

    private static LayoutVerdict Geometry(LayoutInput input, CheckedInput read)
    {
        LayoutVerdict geometry = read.Plan is { } plan ? RollPlanCheck.Verify(input.Layout, plan.Roll, plan.Plan)
            : read.Die is { } die ? DieCheck.Verify(input.Layout, die.Die)
            : LayoutCheck.Verify(input.Layout);
        return geometry with { Violations = [.. geometry.Violations, .. StatedYield.Contradictions(input, YieldAccount.Of(input.Layout))] };
    }
}
