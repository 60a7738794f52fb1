using System.CommandLine;
using System.CommandLine.Parsing;
using FeltNest.Cli.Options;
using FeltNest.Cost.Tickets;
using FeltNest.Files.Csv;
using FeltNest.Runs;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Commands;

/// <summary><c>usage LAYOUT --actuals FILE</c>: why a shift used more or less felt than standard; <c>usage --book BOOK --since DAY</c>: the
/// same of all tickets of a period, out of the book.</summary>
internal sealed class UsageCommand
{
    private readonly Argument<string?> layout = new("LAYOUT")
    {
        Description = "The layout.json that was cut, where no book is given.",
        HelpName = "LAYOUT",
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<string?> actuals = new("--actuals")
    {
        Description = "What the rolls gave (CSV): the filled-in cutting tickets.",
        HelpName = "FILE",
    };
    private readonly Option<string?> costs =
        new("--costs") { Description = "Normal losses and the standard price (JSON).", HelpName = "FILE" };
    private readonly DeskOptions desk = new();
    private readonly Option<string?> since = Day("--since", "First day of the tickets that came back, as 2026-03-02. With --book.");
    private readonly Option<string?> until = Day("--until", "Last day (default: all from --since on). With --book.");
    private readonly Option<string?> by = new("--by")
    {
        Description = "What tickets are put together by (default: cause). With --book.",
        HelpName = string.Join('|', EnumWord.All<TicketGrouping>()),
        CustomParser = ParseBy,
    };

    private readonly Terminal terminal;
    private readonly ListOptions lists;
    private readonly CommonOptions common;

    private UsageCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        desk.Book.Required = false;
        command.Add(layout);
        foreach (Option option in (Option[])[actuals, costs, desk.Book, since, until, by])
        {
            command.Add(option);
        }

        command.Validators.Add(Sources);
        lists = new ListOptions(command, "more panels than the metres of a roll hold, a width or a length that no roll has");
        common = new CommonOptions(command);
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new("usage", "Why a shift, or the tickets of a period, used more or less felt than standard, cause by cause.");
        UsageCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), stop));
        return command;
    }

    // A layout with a list, or a book with a day.
    private void Sources(CommandResult result)
    {
        bool booked = result.GetValue(desk.Book) is not null;
        (string Name, bool Given, bool Needed)[] ofList =
        [
            (layout.Name, result.GetValue(layout) is not null, true), (actuals.Name, result.GetValue(actuals) is not null, true),
            (costs.Name, result.GetValue(costs) is not null, false),
        ];
        (string Name, bool Given, bool Needed)[] ofBook =
        [
            (since.Name, result.GetResult(since) is not null, true), (until.Name, result.GetResult(until) is not null, false),
            (by.Name, result.GetResult(by) is { Implicit: false }, false),
        ];
        foreach ((string name, _, _) in (booked ? ofList : ofBook).Where(option => option.Given))
        {
            result.AddError(booked
                ? $"{name}: the book says it: give {desk.Book.Name}, or a layout and its tickets, not both"
                : $"{name}: give the book too: {desk.Book.Name}");
        }

        foreach ((string name, _, _) in (booked ? ofBook : ofList).Where(option => option.Needed && !option.Given))
        {
            result.AddError(booked
                ? $"{name} is missing: the first day that counts"
                : $"{name} is missing: give {layout.Name} and {actuals.Name}, or {desk.Book.Name}");
        }
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        Answer answer = new(terminal, parse, common);
        bool force = parse.GetValue(common.Force);
        if (parse.GetValue(desk.Book) is null)
        {
            (string cut, string gave, string? known) = (parse.GetValue(layout)!, parse.GetValue(actuals)!, parse.GetValue(costs));
            string given = parse.GetValue(common.Out) ?? DefaultFolder.OfUsage(cut, gave, known);
            return answer.Give(new UsageRun(cut, gave, known, lists.Asked(parse)), given, force, stop, stop);
        }

        (string first, string? last) = (parse.GetValue(since)!, parse.GetValue(until));
        if (last is not null && string.CompareOrdinal(last, first) < 0)
        {
            throw new InputException(null, until.Name, $"{last} lies before {first}");
        }

        string word = parse.GetValue(by) ?? EnumWord.Of(TicketGrouping.Cause);
        using BookDesk at = desk.Desk(parse, terminal);
        PeriodQuestion question = PeriodTickets.Of(at.Store, first, last, EnumWord.Find<TicketGrouping>(word)!.Value);
        string folder = parse.GetValue(common.Out) ?? DefaultFolder.OfPeriod(question.Book, first, last, word);
        return answer.Give(new PeriodRun(question), folder, force, stop, stop);
    }

    private static Option<string?> Day(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "day",
        CustomParser = result =>
        {
            string text = result.Tokens[0].Value;
            if (DayText.Of(text) is null)
            {
                result.AddError($"{name}: '{text}' is not allowed: a day as 2026-03-02");
            }

            return text;
        },
    };

    private static string ParseBy(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (EnumWord.Find<TicketGrouping>(text) is null)
        {
            result.AddError($"--by: '{text}' is not allowed: {string.Join(", ", EnumWord.All<TicketGrouping>())}");
        }

        return text;
    }
}
