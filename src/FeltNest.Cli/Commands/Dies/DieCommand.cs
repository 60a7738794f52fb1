using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Presses;
using FeltNest.Layout;
using FeltNest.Report.Dies;

namespace FeltNest.Cli.Commands.Dies;

/// <summary><c>die LAYOUT --order ORDER --press PRESS</c>: the toolmaker's package; <c>--measured</c> judges a cut panel, <c>--readings</c>
/// a die's life.</summary>
internal static class DieCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string> input = new("LAYOUT")
        {
            Description = "A layout.json; with --measured also a die.json, panel.json or any outline; with --readings a die.json.",
            HelpName = "LAYOUT",
        };
        Option<string?> order = new("--order")
        {
            Description = "What the shop wants of the die (JSON): rule, board, ejection, tolerances, force per mm, title block "
                + "(default: figures common in the trade, named as assumed).",
            HelpName = "file",
        };
        Option<string?> press = new("--press")
        {
            Description = "The press (JSON): bed, force, tolerances of feed and guide. Without it one repeat is one strike and the "
                + "press is not looked at.",
            HelpName = "file",
        };
        Option<int?> cavities = new("--cavities")
        {
            Description = "Cavities of the die (default: as many as tile the layout and the press takes).",
            HelpName = "count",
            CustomParser = result => NumberText.WholeWithin(1, GangChooser.MostCavities)(result),
        };
        Option<int> band = new("--band")
        {
            Description = "Band of the layout the die is for, counted from the lower selvedge.",
            HelpName = "number",
            DefaultValueFactory = _ => 1,
            CustomParser = NumberText.WholeWithin(1, 100),
        };
        Command command = new("die", "Design a gang die for a layout: cavities, drawings, DXF, press check, template; judge what it cuts.")
        {
            input,
            order,
            press,
            cavities,
            band,
        };
        MeasuredOptions measured = new(command);
        CommonOptions common = new(command);
        command.SetAction((parse, stop) => Task.Run(
            () =>
            {
                string path = parse.GetValue(input)!;
                if (parse.GetValue(measured.Measured) is { } points)
                {
                    return MeasuredRun.Run(terminal, parse, path, points, measured, common);
                }

                return parse.GetValue(measured.Readings) is { } readings
                    ? LifeRun.Run(terminal, parse, path, readings, parse.GetValue(measured.Newer), common)
                    : Run(
                        terminal, parse,
                        new Question(path, parse.GetValue(order), parse.GetValue(press), parse.GetValue(cavities), parse.GetValue(band)),
                        common, stop);
            },
            CancellationToken.None));
        return command;
    }

    private static int Run(Terminal terminal, ParseResult parse, Question question, CommonOptions common, CancellationToken stop)
    {
        Answer answer = new(terminal, parse, common);
        RollLayout layout = LayoutReader.Read(question.Layout).Layout;
        GangRequest request = new(
            layout, question.Band - 1, question.Order is { } file ? DieOrderReader.Read(file) : UsualOrder.Of(layout),
            question.Press is { } press ? PressReader.Read(press) : null, question.Cavities);
        ResultFolder results = new(
            parse.GetValue(common.Out)
                ?? DefaultFolder.OfDie(question.Layout, question.Order, question.Press, question.Cavities, question.Band),
                parse.GetValue(common.Force));
        results.Prepare(answer.Named(DieFiles.Names(CutParts.Of(layout, request.Band).Count)));
        DieDesign design = Designed(request, stop);
        return answer.Give(
            results, DieFiles.Make(design, stop), DieReport.Text(design), design.Notes.Select(note => $"warning: {note.Text}"),
            stop: stop);
    }

    // What is wrong with an option is told with its name.
    private static DieDesign Designed(GangRequest request, CancellationToken stop)
    {
        try
        {
            return DieDesigner.Run(request, stop);
        }
        catch (InputException error) when (error.File is null && error.Field is "band")
        {
            throw new InputException(null, $"--{error.Field}", error.Problem, error);
        }
    }

    private readonly record struct Question(string Layout, string? Order, string? Press, int? Cavities, int Band);
}
