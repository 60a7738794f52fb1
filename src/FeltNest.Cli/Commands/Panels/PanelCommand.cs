using System.CommandLine;
using FeltNest.Ball;
using FeltNest.Cli.Options;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Panel;
using FeltNest.Panel.Wrap;
using FeltNest.Report;

namespace FeltNest.Cli.Commands.Panels;

/// <summary><c>panel BALL</c>: the flat panel, its strains, and the ball against the rules.</summary>
internal static class PanelCommand
{
    // Roll and effort of a study of waists when none is given: a common felt width, and little work a waist, as there are many.
    private const double StudyWidthMm = 1500;
    private const int StudyEffort = 1;

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Option<IReadOnlyList<double>?> waists = new("--waist-range")
        {
            Description = "Waists to compare by strain and felt instead of one panel; the options from --width on belong to it.",
            HelpName = "from:to:step",
            CustomParser = WaistRange.Parse,
        };
        Option<bool> seams = new("--seams")
        {
            Description = "Seam families side by side at the ball's waist instead: strains, panel and felt; the options from --width on "
                + "belong to it too.",
        };
        Option<string?> wrap = new("--wrap")
        {
            Description = "Lay this flat outline (or panel.json) on the ball instead: gap or overlap with the edge free, strains and "
                + "pull with the edge on the seam.",
            HelpName = "OUTLINE",
        };
        Option<string?> proven = new("--proven")
        {
            Description = "Fit the ball to this measured panel instead: neutral layer, waist and edge limit that reproduce it best, and "
                + "how well it determines them.",
            HelpName = "OUTLINE",
        };
        Command command = new(
            "panel",
            "The flat panel of a ball: outline, strains, fit to the rules; or waists or seams compared, an outline laid on the ball, "
                + "the ball fitted to a proven panel.");
        BallOptions balls = new(command, takesOutline: false);
        foreach (Option option in new Option[] { waists, seams, wrap, proven })
        {
            command.Add(option);
        }

        LayoutOptions layout = new(command, StudyWidthMm, StudyEffort);
        CommonOptions common = new(command);
        command.SetAction((parse, stop) => Task.Run(() => Run(parse, stop), CancellationToken.None));
        return command;

        int Run(ParseResult parse, CancellationToken stop)
        {
            string path = balls.NamedPath(parse);
            Option[] jobs =
            [
                .. new Option[] { waists, seams, wrap, proven }.Where(option => parse.GetResult(option) is { Implicit: false }),
            ];
            if (jobs.Length > 1)
            {
                throw new InputException(null, jobs[1].Name, $"cannot go with {jobs[0].Name}: give one of them");
            }

            if (!jobs.Contains(waists) && !jobs.Contains(seams) && layout.FirstGiven(parse) is { } stray)
            {
                throw new InputException(
                    null, stray, "belongs to --waist-range and --seams: give one of them too, or use the layout command");
            }

            BallInput input = balls.ReadBall(parse);
            foreach (string assumed in balls.Assumed(parse))
            {
                terminal.Say(assumed);
            }

            return parse.GetValue(wrap) is { } laid ? WrapCommand.Run(terminal, parse, path, input.Ball, laid, common)
                : parse.GetValue(proven) is { } measured ? ProvenCommand.Run(terminal, parse, path, input.Ball, measured, common)
                : parse.GetValue(waists) is { } range ? WaistCommand.Run(terminal, parse, path, input.Ball, range, layout, common, stop)
                : parse.GetValue(seams) ? SeamsCommand.Run(terminal, parse, path, input.Ball, layout, common, stop)
                : RunOne(new Answer(terminal, parse, common), input, path, parse.GetValue(common.Out), parse.GetValue(common.Force));
        }
    }

    private static int RunOne(Answer answer, BallInput input, string path, string? folder, bool force)
    {
        ResultFolder results = new(folder ?? DefaultFolder.OfPanel(path), force);
        results.Prepare(answer.Named(PanelFiles.Names));
        FlatPanel panel = PanelFit.Felt(input.Ball, PanelFlattener.Flatten(input.Ball));
        return answer.Give(
            results, PanelFiles.Make(input.Ball, panel), PanelReport.Text(input.Ball, panel, input.Assumed),
            PanelWarnings.Of(input.Ball, panel, MassBudget.Of(input.Ball, panel.AreaMm2)).Select(warning => $"warning: {warning}"));
    }
}
