using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using FeltNest.Ball.Ranges;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Cost.Sheet;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Presses;
using FeltNest.Report.Orders;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Presses;

namespace FeltNest.Cli.Commands;

/// <summary><c>orders ORDERS --stock STOCK</c>: which rolls to cut for which order, what to buy, and the tickets.</summary>
internal sealed class OrdersCommand
{
    private readonly Argument<string> orders = new("ORDERS") { Description = "Orders (CSV).", HelpName = "ORDERS" };
    private readonly Option<string> stock = new("--stock") { Description = "Rolls in stock (CSV).", HelpName = "STOCK", Required = true };
    private readonly Option<string> dies = new("--dies")
    {
        Description = "Dies on the rack or to be made (CSV), each with its layout.",
        HelpName = "DIES",
        Required = true,
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
    private readonly Option<double> hours =
        Number("--hours-per-day", "Hours a press runs on a working day, Monday to Friday.", 8, ShopRanges.HoursPerDay);
    private readonly Option<double> value =
        Number("--remnant-value", "What felt that goes back to stock is worth, per cent of its price.", 100, ShopRanges.RemnantValue);
    private readonly Option<double> leastRemnant =
        Number("--least-remnant", "Shortest remnant that goes back to stock, m; shorter ones are waste.", 2, ShopRanges.LeastPiece);
    private readonly Option<double> leastCut =
        Number("--least-cut", "Shortest piece of a roll worth the handling for an order, m.", 1, ShopRanges.LeastPiece);

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
    private readonly CommonOptions common;

    private OrdersCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        command.Add(orders);
        foreach (Option option in (Option[])
        [
            stock, dies, presses, start, offers, costs, hours, value, leastRemnant, leastCut, effort, seconds,
        ])
        {
            command.Add(option);
        }

        common = new CommonOptions(command);
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
        OrderQuestion question = Question(parse);
        string folder = parse.GetValue(common.Out)
            ?? DefaultFolder.OfOrders(
                parse.GetValue(orders)!, parse.GetValue(stock)!, question.Rules.Start, parse.GetValue(offers), parse.GetValue(costs));
        ResultFolder results = new(folder, parse.GetValue(common.Force));
        results.Prepare(answer.Named(OrderFiles.Names));
        using CancellationTokenSource capped = parse.GetValue(seconds) is { } cap
            ? terminal.Clock.Capped(cap, stop)
            : CancellationTokenSource.CreateLinkedTokenSource(stop);
        (OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets) =
            MeasuredPlanner.Run(question, parse.GetValue(effort), answer.Quiet ? null : new PlanLine(terminal), capped.Token);
        terminal.HandOver.Begin();
        return answer.Give(
            results, OrderFiles.Make(plan, tickets, stop), OrderReport.Text(plan),
            OrderReport.Warnings(plan).Select(line => $"warning: {line}"), plan.Proof.CutShort, stop);
    }

    private OrderQuestion Question(ParseResult parse)
    {
        string stockFile = parse.GetValue(stock)!;
        CostInputs known = parse.GetValue(costs) is { } file ? CostsReader.Read(file) : CostInputs.Bare(StockReader.CurrencyOf(stockFile));
        StockReader reader = new(known);
        IReadOnlyList<StockRoll> rolls = reader.Read(stockFile);
        FeltPurchase[] bought = parse.GetValue(offers) is { } list
            ? [.. OffersReader.Read(list).Select(offer => Named(list, () => reader.Offered(offer)))]
            : [];
        IReadOnlyList<CutDie> rack = DiesReader.Read(parse.GetValue(dies)!);
        IReadOnlyList<CoverOrder> wanted = OrdersReader.Read(
            parse.GetValue(orders)!, rack.Select(d => d.Ball), [.. rolls.Select(r => r.Felt), .. bought.Select(b => b.Roll.Felt)]);
        OrderRules rules = new(
            known.Currency, parse.GetValue(start), parse.GetValue(hours), known.Losses.EndLossMm, known.Losses.RejectPercent,
            known.Losses.UnpairedPercent, parse.GetValue(value),
            parse.GetValue(leastRemnant), parse.GetValue(leastCut), (known.PerStrike ?? 0) + (known.BoardPerStrike ?? 0),
            known.SetUp?.RatePerHour ?? 0);
        return new OrderQuestion(wanted, rolls, bought, rack, Presses(parse, rack), rules);
    }

    private PressSpec[] Presses(ParseResult parse, IReadOnlyList<CutDie> rack)
    {
        List<PressSpec> read = [];
        foreach (string file in parse.GetValue(presses)!)
        {
            PressSpec press = PressReader.Read(file);
            if (read.Exists(p => p.Name == press.Name))
            {
                throw new InputException(file, "name", $"'{press.Name}' is given twice: every press needs a name of its own");
            }

            read.Add(press);
        }

        return rack.Any(die => read.Exists(press => OrderQuestion.Takes(press, die)))
            ?
            [
                .. read,
            ] : throw new NoAnswerException(
                $"no press takes any of the dies {string.Join(", ", rack.Select(d => d.Name))}: name them under dies in a press file, "
                    + $"or use a larger bed");
    }

    private static T Named<T>(string file, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (InputException error) when (error.File is null)
        {
            throw error.InFile(file);
        }
    }

    private static Option<double> Number(string name, string description, double usual, FieldRange range) => new(name)
    {
        Description = description,
        HelpName = range.Unit,
        DefaultValueFactory = _ => usual,
        CustomParser = NumberText.Within(range),
    };

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
