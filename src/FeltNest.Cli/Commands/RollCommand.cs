using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Layout.Limits;
using FeltNest.Rolls.Plan;
using FeltNest.Runs.Rolls;

namespace FeltNest.Cli.Commands;

/// <summary><c>roll LAYOUT --roll ROLL</c>: where to strike one real roll.</summary>
internal sealed class RollCommand
{
    // A former name, taken for this version.
    private const string FormerShift = "--guide-play";

    private readonly Argument<string> layout = new("LAYOUT")
    {
        Description = "A layout.json; bands need a common repeat, or are planned one by one.",
        HelpName = "LAYOUT",
    };

    private readonly Option<string> roll = new("--roll")
    {
        Description = "The roll as measured (JSON): width readings, splices, faults.",
        HelpName = "file",
        Required = true,
    };

    private readonly Option<int> repeats = new("--repeats-per-strike")
    {
        Description = "Repeats of the layout that one strike cuts.",
        HelpName = "count",
        DefaultValueFactory = _ => 1,
        CustomParser = NumberText.WholeWithin(1, StrikePlanner.MostRepeats),
    };

    private readonly Option<string?> die = new("--die")
    {
        Description = "The die that cuts it (die.json of this layout): says how many repeats one strike, or one feed, cuts.",
        HelpName = "file",
    };

    private readonly Option<double> shift = new("--side-shift", FormerShift)
    {
        Description = "How far the roll can be moved to either side under the press.",
        HelpName = "length",
        DefaultValueFactory = _ => 0,
        CustomParser = LengthText.OrZero,
    };

    private readonly Option<double> from = new("--from")
    {
        Description = "Where the usable roll starts: plans the rest of a roll that is partly cut.",
        HelpName = "length",
        DefaultValueFactory = _ => 0,
        CustomParser = LengthText.OrZero,
    };

    private readonly Option<bool> pastEnd = new("--past-end")
    {
        Description = "The last strike may reach past the end of the roll: the press is then loaded off centre.",
    };

    private readonly Option<int?> band = new("--band")
    {
        Description = "Plan the strikes of one band of the layout, counted from the lower selvedge: a die of its own cuts it.",
        HelpName = "n",
        CustomParser = result => NumberText.WholeWithin(1, LayoutLimits.MostBands)(result),
    };

    private readonly Terminal terminal;
    private readonly PaperOption paper;
    private readonly CommonOptions common;

    private RollCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        command.Add(layout);
        foreach (Option option in (Option[])[roll, repeats, die, shift, from, pastEnd, band])
        {
            command.Add(option);
        }

        paper = new PaperOption(command, "Paper of the map in roll.pdf, whose first page is the ticket on A4.");
        common = new CommonOptions(command);
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new("roll", "Plan the strikes of one real roll so that the most panels are good.");
        RollCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), stop));
        return command;
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        if (parse.Tokens.Any(token => token.Value == FormerShift) && !parse.GetValue(common.Quiet))
        {
            terminal.Say($"note: {FormerShift} is called {shift.Name} now; the old name goes with the next version");
        }

        RollAsk asked = new()
        {
            LayoutFile = parse.GetValue(layout)!,
            RollFile = parse.GetValue(roll)!,
            Repeats = parse.GetResult(repeats) is { Implicit: false } ? parse.GetValue(repeats) : null,
            DieFile = parse.GetValue(die),
            SideShiftMm = parse.GetValue(shift),
            FromMm = parse.GetValue(from),
            PastEnd = parse.GetValue(pastEnd),
            Band = parse.GetValue(band),
            Paper = paper.Of(parse),
        };
        RollRun run = new(asked);
        string folder = parse.GetValue(common.Out)
            ?? DefaultFolder.OfRollPlan(asked, run.Repeats);
        return new Answer(terminal, parse, common).Give(run, folder, parse.GetValue(common.Force), stop, stop);
    }
}
