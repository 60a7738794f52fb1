using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Die.Bend;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Presses;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Runs;
using FeltNest.Runs.Dies;

namespace FeltNest.Cli.Commands;

/// <summary><c>die LAYOUT --order ORDER --press PRESS</c>: the toolmaker's package; <c>--measured</c> judges a cut panel,
/// <c>--as-made</c> the die, <c>--readings</c>
/// a die's life.</summary>
internal sealed class DieCommand
{
    private readonly Argument<string> input = new("LAYOUT")
    {
        Description = "A layout.json; with --measured also a die.json, panel.json or any outline; with --as-made and --readings a "
            + "die.json.",
        HelpName = "LAYOUT",
    };

    private readonly Option<string?> order = new("--order")
    {
        Description = "What the shop wants of the die (JSON): rule, board, ejection, tolerances, force per mm, title block "
            + "(default: figures common in the trade, named as assumed).",
        HelpName = "file",
    };

    private readonly Option<string?> press = new("--press")
    {
        Description = "The press (JSON): bed, force, tolerances of feed and guide. Without it one repeat is one strike and the "
            + "press is not looked at.",
        HelpName = "file",
    };

    private readonly Option<int?> cavities = new("--cavities")
    {
        Description = "Cavities of the die (default: as many as tile the layout and the press takes).",
        HelpName = "count",
        CustomParser = result => NumberText.WholeWithin(1, GangChooser.MostCavities)(result),
    };

    private readonly Option<int> band = new("--band")
    {
        Description = "Band of the layout the die is for, counted from the lower selvedge.",
        HelpName = "number",
        DefaultValueFactory = _ => 1,
        CustomParser = NumberText.WholeWithin(1, 100),
    };

    private readonly Option<string?> bends = new("--bends")
    {
        Description = "Test bends of your own rule on your own bender (CSV: insideRadiusMm, angleSetDeg, angleGotDeg); without them "
            + "springback is unknown.",
        HelpName = "file",
    };

    private readonly Terminal terminal;
    private readonly MeasuredOptions measured;
    private readonly CommonOptions common;

    private DieCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        command.Add(input);
        foreach (Option option in (Option[])[order, press, cavities, band, bends])
        {
            command.Add(option);
        }

        measured = new MeasuredOptions(command);
        common = new CommonOptions(command);
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new("die", "Design a gang die for a layout: cavities, drawings, DXF, press check, template; judge what it cuts.");
        DieCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        (IRun run, string folder) = Asked(parse);
        return new Answer(terminal, parse, common)
            .Give(run, parse.GetValue(common.Out) ?? folder, parse.GetValue(common.Force), stop, stop);
    }

    private (IRun Run, string Folder) Asked(ParseResult parse)
    {
        string path = parse.GetValue(input)!;
        measured.RefuseStrays(parse, [order, press, cavities, band, bends]);
        if (parse.GetValue(measured.Measured) is { } points)
        {
            return (new FirstArticleRun(measured.Asked(parse, path, points)), DefaultFolder.OfMeasured(path, "measured", points));
        }

        if (parse.GetValue(measured.AsMade) is { } made)
        {
            return (
                new MadeDieRun(measured.AskedOfDie(parse, path, made), measured.Lists(parse)),
                DefaultFolder.OfMeasured(path, "made", made));
        }

        if (parse.GetValue(measured.QuoteAnswer) is { } answer)
        {
            return (new QuoteAnswerRun(path, answer, measured.CostsOf(parse)), DefaultFolder.OfMeasured(path, "quoted", answer));
        }

        if (parse.GetValue(measured.Readings) is { } readings)
        {
            return (new LifeRun(
                path, readings, parse.GetValue(measured.Newer), measured.Lists(parse)), DefaultFolder.OfMeasured(path, "life", readings));
        }

        RollLayout layout = LayoutReader.Read(path).Layout;
        DieOrder? asked = parse.GetValue(order) is { } file ? DieOrderReader.Read(file) : null;
        PressSpec? machine = parse.GetValue(press) is { } named ? PressReader.Read(named) : null;
        IReadOnlyList<BendTest>? tests =
            parse.GetValue(bends) is { } listed ? BendTestsReader.Read(measured.Lists(parse).Open(listed)) : null;
        return (
            new DieRun(layout, parse.GetValue(band) - 1, asked, machine, parse.GetValue(cavities), tests),
            DefaultFolder.OfDie(path, parse.GetValue(order), parse.GetValue(press), parse.GetValue(cavities), parse.GetValue(band)));
    }
}
