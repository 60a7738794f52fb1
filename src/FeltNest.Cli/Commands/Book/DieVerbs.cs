using System.CommandLine;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Commands.Book;

/// <summary>Commands for dies.</summary>
internal static class DieVerbs
{
    /// <summary>The commands.</summary>
    public static IEnumerable<Command> All(Terminal terminal) => [Ready(terminal), Mount(terminal), Strike(terminal), Rule(terminal)];

    private static Command Ready(Terminal terminal)
    {
        BookVerb verb = new(terminal, "ready", "A die that was to be made is there.");
        Argument<string> die = verb.Input("DIE", "Name of the die.");
        Option<int?> strikes = verb.Count("--strikes", "Strikes of its rule (default: the life in its line).");
        return verb.Writes((parse, desk) => DieEntries.Ready(desk, parse.GetValue(die)!, parse.GetValue(strikes)));
    }

    private static Command Mount(Terminal terminal)
    {
        BookVerb verb = new(terminal, "mount", "A die was put on a press.");
        Argument<string> die = verb.Input("DIE", "Name of the die.");
        Option<string> press = new("--press") { Description = "Name of the press.", HelpName = "press", Required = true };
        verb.Command.Add(press);
        return verb.Writes((parse, desk) => DieEntries.Mounted(desk, parse.GetValue(die)!, parse.GetValue(press)!));
    }

    private static Command Strike(Terminal terminal)
    {
        BookVerb verb = new(terminal, "strike", "A die was struck without a ticket: a trial, a first article.");
        Argument<string> die = verb.Input("DIE", "Name of the die.");
        Option<int> strikes = new("--strikes")
        {
            Description = "Strikes made.",
            HelpName = "n",
            Required = true,
            CustomParser = FeltNest.Cli.Options.NumberText.WholeWithin(0, FeltNest.Files.ShopRanges.MostCount),
        };
        verb.Command.Add(strikes);
        Option<string?> why = verb.Text("--why", "text", "Why.");
        return verb.Writes((parse, desk) =>
            DieEntries.Struck(desk, parse.GetValue(die)!, parse.GetValue(strikes), parse.GetValue(why)));
    }

    private static Command Rule(Terminal terminal)
    {
        BookVerb verb = new(terminal, "rule", "A die was ruled again.");
        Argument<string> die = verb.Input("DIE", "Name of the die.");
        Option<int?> strikes = verb.Count("--strikes", "Strikes of its new rule (default: the life in its line).");
        Option<string?> why = verb.Text("--why", "text", "Why.");
        return verb.Writes((parse, desk) => DieEntries.Ruled(desk, parse.GetValue(die)!, parse.GetValue(strikes), parse.GetValue(why)));
    }
}
