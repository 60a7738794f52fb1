using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Runs;

namespace FeltNest.Cli.Commands;

/// <summary><c>usage LAYOUT --actuals FILE</c>: why a shift used more or less felt than standard.</summary>
internal static class UsageCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string> layout = new("LAYOUT") { Description = "The layout.json that was cut.", HelpName = "LAYOUT" };
        Option<string> actuals = new("--actuals")
        {
            Description = "What the rolls gave (CSV): the filled-in cutting tickets.",
            HelpName = "FILE",
            Required = true,
        };
        Option<string?> costs = new("--costs") { Description = "Normal losses and the standard price (JSON).", HelpName = "FILE" };
        Command command = new("usage", "Why a shift used more or less felt than standard, cause by cause.") { layout, actuals, costs };
        ListOptions lists = new(command, "more panels than the metres of a roll hold, a width or a length that no roll has");
        CommonOptions common = new(command);
        command.SetAction((parse, stop) => Task.Run(
            () =>
            {
                (string cut, string gave, string? known) = (parse.GetValue(layout)!, parse.GetValue(actuals)!, parse.GetValue(costs));
                string folder = parse.GetValue(common.Out) ?? DefaultFolder.OfUsage(cut, gave, known);
                return new Answer(terminal, parse, common)
                    .Give(new UsageRun(cut, gave, known, lists.Asked(parse)), folder, parse.GetValue(common.Force), stop, stop);
            },
            stop));
        return command;
    }
}
