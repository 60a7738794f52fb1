using System.CommandLine;
using FeltNest.Files;
using FeltNest.Files.Csv;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Commands.Book;

/// <summary><c>book standard BALL</c>: what felt is promised for a ball from a day on.</summary>
internal static class StandardVerb
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        BookVerb verb = new(
            terminal, "standard", "What felt is promised for a ball from a day on: a new version, which changes no day before it.");
        Argument<string> ball = verb.Input("BALL", "Name of the ball.");
        Option<string> layout = new("--layout") { Description = "Its layout.", HelpName = "LAYOUT", Required = true };
        Option<string> costs = new("--costs")
        {
            Description = "Normal losses, length of a roll and price of the felt (JSON).",
            HelpName = "COSTS",
            Required = true,
        };
        Option<string> from = new("--from")
        {
            Description = "First day it holds, as 2026-03-02; not before the day of writing.",
            HelpName = "day",
            Required = true,
        };
        verb.Command.Add(layout);
        verb.Command.Add(costs);
        verb.Command.Add(from);
        return verb.Writes((parse, desk) => StandardEntries.Set(desk, new StandardAsk
        {
            Ball = parse.GetValue(ball)!,
            LayoutFile = parse.GetValue(layout)!,
            CostsFile = parse.GetValue(costs)!,
            From = Day(parse.GetValue(from)!),
        }));
    }

    private static string Day(string text) => DayText.Of(text) is not null
        ? text
        : throw new InputException(null, "--from", $"'{OneLine.Of(text)}' is not a day: write it as 2026-03-31 (year-month-day)");
}
