using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Rolls.Plan;
using FeltNest.Runs.Rolls;

namespace FeltNest.Cli.Commands;

/// <summary><c>roll LAYOUT --roll ROLL</c>: where to strike one real roll.</summary>
internal static class RollCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string> layout = new("LAYOUT") { Description = "A layout.json with one repeat for the whole width.", HelpName = "LAYOUT" };
        Option<string> roll = new("--roll")
        {
            Description = "The roll as measured (JSON): width readings, joints, faults.",
            HelpName = "file",
            Required = true,
        };
        Option<int> repeats = new("--repeats-per-strike")
        {
            Description = "Repeats of the layout that one strike cuts.",
            HelpName = "count",
            DefaultValueFactory = _ => 1,
            CustomParser = NumberText.WholeWithin(1, StrikePlanner.MostRepeats),
        };
        Option<string?> die = new("--die")
        {
            Description = "The die that cuts it (die.json of this layout): says how many repeats one strike, or one feed, cuts.",
            HelpName = "file",
        };
        Option<double> play = new("--guide-play")
        {
            Description = "How far the roll can be moved to either side under the press.",
            HelpName = "length",
            DefaultValueFactory = _ => 0,
            CustomParser = LengthText.OrZero,
        };
        Option<double> from = new("--from")
        {
            Description = "Where the usable roll starts: plans the rest of a roll that is partly cut.",
            HelpName = "length",
            DefaultValueFactory = _ => 0,
            CustomParser = LengthText.OrZero,
        };
        Command command = new("roll", "Plan the strikes of one real roll so that the most panels are good.")
        {
            layout,
            roll,
            repeats,
            die,
            play,
            from,
        };
        CommonOptions common = new(command);
        command.SetAction((parse, stop) => Task.Run(
            () =>
            {
                RollAsk asked = new()
                {
                    LayoutFile = parse.GetValue(layout)!,
                    RollFile = parse.GetValue(roll)!,
                    Repeats = parse.GetResult(repeats) is { Implicit: false } ? parse.GetValue(repeats) : null,
                    DieFile = parse.GetValue(die),
                    SideShiftMm = parse.GetValue(play),
                    FromMm = parse.GetValue(from),
                };
                RollRun run = new(asked);
                string folder = parse.GetValue(common.Out)
                    ?? DefaultFolder.OfRollPlan(asked.LayoutFile, asked.RollFile, run.Repeats, asked.SideShiftMm, asked.FromMm);
                return new Answer(terminal, parse, common).Give(run, folder, parse.GetValue(common.Force), stop, stop);
            },
            stop));
        return command;
    }
}
