using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using FeltNest.Ball.Ranges;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Files;
using FeltNest.Rolls.Orders;
using FeltNest.Runs.Book;
using FeltNest.Runs.Rolls;

namespace FeltNest.Cli.Commands;

/// <summary><c>orders ORDERS --stock STOCK</c>: which rolls to cut for which order, what to buy, and the tickets.</summary>
internal sealed class OrdersCommand
{
    private readonly Argument<string?> orders = new("ORDERS")
    {
        Description = "Orders (CSV), where no book is given.",
        HelpName = "ORDERS",
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<string?> stock = new("--stock") { Description = "Rolls in stock (CSV).", HelpName = "STOCK" };
    private readonly Option<string?> dies = new("--dies")
    {
        Description = "Dies on the rack or to be made (CSV), each with its layout.",
        HelpName = "DIES",
    };
    private readonly DeskOptions desk = new();
    private readonly Option<bool> take = new("--take")
    {
        Description = "Put the plan and its tickets into the book: the next plan goes on from there. With --book.",
    };
    private readonly Option<string[]> presses = new("--press")
    {
        Description = "A press (JSON); may be given again.",
        HelpName = "PRESS",
        Required = true,
    };
    private readonly Option<DateOnly> start = new("--start")
    {
        Description = "First day of cutting, as 2026-03-02.",
        HelpName = "day",
        Required = true,
        CustomParser = ParseDay,
    };
    private readonly Option<string?> offers = new("--offers") { Description = "Felt that can be bought (CSV).", HelpName = "OFFERS" };
    private readonly Option<string?> costs = new("--costs")
    {
        Description = "What the shop knows of its costs (JSON): losses, strikes, rates of currencies.",
        HelpName = "COSTS",
    };
    private readonly Option<string?> calendar = new("--calendar")
    {
        Description = "Shifts, holidays, repairs and overtime of the presses (CSV).",
        HelpName = "CALENDAR",
    };
    private readonly Option<string?> fromPlan = new("--from-plan")
    {
        Description = "A plan (orders.json) of which some is cut: ORDERS, STOCK and DIES are the lists it was made from.",
        HelpName = "PLAN",
    };
    private readonly Option<string?> done = new("--done")
    {
        Description = "What is cut of that plan (CSV): it is taken off, and jobs begun are kept. With --from-plan.",
        HelpName = "DONE",
    };
    private readonly Option<double> hours = Number(
        "--hours-per-day", "Hours a press without a calendar runs on a working day, Monday to Friday from 06:00.", 8,
        ShopRanges.HoursPerDay);
    private readonly Option<double> value =
        Number("--remnant-value", "What felt that goes back to stock is worth, per cent of its price.", 100, ShopRanges.RemnantValue);
    private readonly Option<double> leastRemnant =
        Number("--least-remnant", "Shortest remnant that goes back to stock, m; shorter ones are waste.", 2, ShopRanges.LeastPiece);
    private readonly Option<double> leastCut =
        Number("--least-cut", "Shortest piece of a roll worth the handling for an order, m.", 1, ShopRanges.LeastPiece);

    private readonly Option<string> nap = new("--nap")
    {
        Description = "Rolls whose nap lies against the feed, under a one-way layout: turn: turned end for end; apart: no order is cut "
            + "from "
            + "rolls of both directions.",
        HelpName = string.Join('|', EnumWord.All<NapHandling>()),
        DefaultValueFactory = _ => EnumWord.Of(NapHandling.Turn),
        CustomParser = ParseNap,
    };

    private readonly Option<int> effort = new("--effort")
    {
        Description = "Counted work of the search, 1 to 1000; it ends sooner where the best plan is proved.",
        HelpName = "n",
        DefaultValueFactory = _ => 5,
        CustomParser = NumberText.WholeWithin(1, OrderPlanner.MostEffort),
    };

    private readonly Option<double?> seconds = new("--seconds")
    {
        Description = "Wall-clock cap on the search; a search cut short is not promised to repeat.",
        HelpName = "s",
        CustomParser = result => NumberText.Within(0.01, 86400, "seconds")(result),
    };

    private readonly Terminal terminal;
    private readonly ListOptions lists;
    private readonly CommonOptions common;

    private OrdersCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        desk.Book.Required = false;
        command.Add(orders);
        foreach (Option option in (Option[])
        [
            stock, dies, desk.Book, take, desk.By, desk.At, presses, start, offers, costs, calendar, fromPlan, done,
            hours, value, leastRemnant, leastCut, nap, effort, seconds,
        ])
        {
            command.Add(option);
        }

        command.Validators.Add(result =>
        {
            if (result.GetValue(done) is not null && result.GetValue(fromPlan) is null)
            {
                result.AddError("--done: give the plan too that it is of: --from-plan");
            }
        });
        command.Validators.Add(Lists);
        lists = new ListOptions(command, "an order that wants many times all the felt in stock");
        common = new CommonOptions(command);
    }

    // The three lists, or a book that holds them.
    private void Lists(CommandResult result)
    {
        bool booked = result.GetValue(desk.Book) is not null;
        (string Name, bool Given)[] lists =
        [
            (orders.Name, result.GetValue(orders) is not null), (stock.Name, result.GetValue(stock) is not null),
            (dies.Name, result.GetValue(dies) is not null),
        ];
        foreach ((string name, bool given) in lists.Where(list => list.Given == booked))
        {
            result.AddError(booked
                ? $"{name}: the book says it: give {desk.Book.Name} or lists, not both"
                : $"{name} is missing: give the lists {string.Join(", ", lists.Select(list => list.Name))}, or {desk.Book.Name}");
        }

        Option? stray = new Option[] { take, desk.By, desk.At }.FirstOrDefault(o => result.GetResult(o) is { Implicit: false });
        if (stray is not null && !booked)
        {
            result.AddError($"{stray.Name}: give the book too: {desk.Book.Name}");
        }

        if (booked && result.GetValue(fromPlan) is not null)
        {
            result.AddError($"{fromPlan.Name}: the book says what is cut: leave it out");
        }
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new(
            "orders", "Plan orders against stock: what to cut from which roll, what to buy, which dies to make, with cutting tickets.");
        OrdersCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        Answer answer = new(terminal, parse, common);
        using BookDesk? at = parse.GetValue(desk.Book) is null ? null : desk.Desk(parse, terminal);
        OrdersAsk asked = Asked(parse) with { Book = at is null ? null : BookLists.Of(at.Store) };
        string folder = parse.GetValue(common.Out) ?? DefaultFolder.OfOrders(asked);
        OrdersRun run = new(asked with { OutFolder = folder }) { Progress = answer.Quiet ? null : new PlanLine(terminal) };
        using CancellationTokenSource capped = parse.GetValue(seconds) is { } cap
            ? terminal.Clock.Capped(cap, stop, run.Things)
            : CancellationTokenSource.CreateLinkedTokenSource(stop);
        int code = answer.Give(run, folder, parse.GetValue(common.Force), capped.Token, stop);
        return parse.GetValue(take) ? Taken(at!, run, asked.Book!, code) : code;
    }

    // The files are there first: a ticket in the book has its paper.
    private int Taken(BookDesk at, OrdersRun run, BookLists lists, int code)
    {
        if (code != ExitCode.Done)
        {
            terminal.Say("the plan was not taken into the book");
            return code;
        }

        BookSaid said = PlanTaking.Take(at, run.Plan!, lists);
        foreach (string line in (string[])[said.Line, .. said.Notes.Select(note => $"note: {note}")])
        {
            terminal.Say(line);
        }

        return code;
    }

    private OrdersAsk Asked(ParseResult parse) => new()
    {
        OrdersFile = parse.GetValue(orders),
        StockFile = parse.GetValue(stock),
        DiesFile = parse.GetValue(dies),
        PressFiles = parse.GetValue(presses)!,
        OffersFile = parse.GetValue(offers),
        CostsFile = parse.GetValue(costs),
        CalendarFile = parse.GetValue(calendar),
        FromPlanFile = parse.GetValue(fromPlan),
        DoneFile = parse.GetValue(done),
        Lists = lists.Asked(parse),
        Start = parse.GetValue(start),
        HoursPerDay = parse.GetValue(hours),
        RemnantValuePercent = parse.GetValue(value),
        LeastRemnantM = parse.GetValue(leastRemnant),
        LeastCutM = parse.GetValue(leastCut),
        Nap = EnumWord.Find<NapHandling>(parse.GetValue(nap)!)!.Value,
        Effort = parse.GetValue(effort),
    };

    private static Option<double> Number(string name, string description, double usual, FieldRange range) => new(name)
    {
        Description = description,
        HelpName = range.Unit,
        DefaultValueFactory = _ => usual,
        CustomParser = NumberText.Within(range),
    };

    private static string ParseNap(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (EnumWord.Find<NapHandling>(text) is null)
        {
            result.AddError($"--nap: '{text}' is not allowed: {string.Join(", ", EnumWord.All<NapHandling>())}");
        }

        return text;
    }

    private static DateOnly ParseDay(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            return day;
        }

        result.AddError($"--start: '{text}' is not allowed: a day as 2026-03-02");
        return default;
    }
}
