using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Die.Check;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;
using FeltNest.Layout;
using FeltNest.Report.Rolls;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;

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
            Description = "Where whole cloth begins: plans the rest of a roll that is partly cut.",
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
            () => Run(
                terminal, parse,
                new Question(
                    parse.GetValue(layout)!, parse.GetValue(roll)!, Repeats(parse, repeats, die, parse.GetValue(layout)!),
                    parse.GetValue(play), parse.GetValue(from)), common), stop));
        return command;
    }

    // Repeats as the die has them, where one is given: it must be a die of the very layout.
    private static int Repeats(ParseResult parse, Option<int> repeats, Option<string?> die, string layout)
    {
        if (parse.GetValue(die) is not { } path)
        {
            return parse.GetValue(repeats);
        }

        if (parse.GetResult(repeats) is { Implicit: false })
        {
            throw new InputException(null, "--die", "says how many repeats a strike cuts: leave --repeats-per-strike out");
        }

        DieInput read = DieReader.Read(path);
        return SameLay.Are(read.Layout.Layout, LayoutReader.Read(layout).Layout)
            ? read.Repeats : throw new InputException(
                path, "layout", $"is not the lay of {layout}: its die cuts other panels or other places");
    }

    private static int Run(Terminal terminal, ParseResult parse, Question question, CommonOptions common)
    {
        Answer answer = new(terminal, parse, common);
        RollLayout layout = LayoutReader.Read(question.Layout).Layout;
        FeltRoll roll = RollReader.Read(question.Roll);
        ResultFolder results = new(
            parse.GetValue(common.Out)
                ?? DefaultFolder.OfRollPlan(question.Layout, question.Roll, question.Repeats, question.PlayMm, question.FromMm),
                parse.GetValue(common.Force));
        results.Prepare(answer.Named(RollFiles.Names));
        RollPlan plan = Plan(question, layout, roll);
        IReadOnlyList<(string Name, byte[] Content)> files = RollFiles.Make(plan);
        return answer.Give(
            results, files,
            RollReport.Text(plan), RollReport.Warnings(plan).Select(warning => $"warning: {warning}"));
    }

    // What is wrong with the layout is told with its file; the rest are options.
    private static RollPlan Plan(Question question, RollLayout layout, FeltRoll roll)
    {
        try
        {
            RollRequest request = new(layout, roll, question.Repeats, question.PlayMm, question.FromMm);
            RollRoom.Require(request);
            return StrikePlanner.Run(request);
        }
        catch (InputException error) when (error.Field == "bands")
        {
            throw error.InFile(question.Layout);
        }
        catch (InputException error) when (error.File is null)
        {
            throw new InputException(null, $"--{error.Field}", error.Problem, error);
        }
    }

    private readonly record struct Question(string Layout, string Roll, int Repeats, double PlayMm, double FromMm);
}
