using System.CommandLine;
using FeltNest.Ball;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Design;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Files.Outlines;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Runs;
using FeltNest.Runs.Panels;
using static FeltNest.InvariantText;

namespace FeltNest.Cli.Commands;

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
            Answer answer = new(terminal, parse, common);
            bool loud = !answer.Quiet;
            using CancellationTokenSource capped = layout.Capped(parse, terminal, stop);
            (IRun run, string folder) = Asked(parse, input, path, loud);
            return answer.Give(
                run, parse.GetValue(common.Out) ?? folder, parse.GetValue(common.Force), capped.Token, stop, balls.Assumed(parse));
        }

        (IRun Run, string Folder) Asked(ParseResult parse, BallInput input, string path, bool loud)
        {
            BallSpec ball = input.Ball;
            if (parse.GetValue(wrap) is { } laid)
            {
                return (
                    new WrapRun { Ball = ball, Outline = OutlineOf(laid, "wrap"), OutlineFile = laid },
                    DefaultFolder.OfOutline(path, "wrap", laid));
            }

            if (parse.GetValue(proven) is { } measured)
            {
                return (
                    new ProvenRun { Ball = ball, Outline = OutlineOf(measured, "proven"), OutlineFile = measured },
                    DefaultFolder.OfOutline(path, "proven", measured));
            }

            if (parse.GetValue(waists) is { } range)
            {
                LayoutRequest named = Named(parse, ball);
                return (
                    new WaistRun
                    {
                        Ball = ball,
                        WaistsMm = range,
                        Lay = part => layout.Request(parse, part),
                        Progress = loud ? new WaistLine(terminal, range.Count) : null,
                    },
                    DefaultFolder.OfWaists(path, range, named, layout.Usual(named), layout.Seconds(parse)));
            }

            if (parse.GetValue(seams))
            {
                LayoutRequest named = Named(parse, ball);
                return (
                    new SeamsRun
                    {
                        Ball = ball,
                        Lay = part => layout.Request(parse, part),
                        Progress = loud ? new SeamLines(terminal) : null,
                    },
                    DefaultFolder.OfSeams(path, named, layout.Usual(named), layout.Seconds(parse)));
            }

            return (new PanelRun { Ball = ball, Assumed = input.Assumed }, DefaultFolder.OfPanel(path));
        }

        // The folder is named by the question alone; the part does not matter for it.
        LayoutRequest Named(ParseResult parse, BallSpec ball) =>
            layout.Request(parse, CoverPart.Of(ball, PanelFlattener.Flatten(ball)));
    }

    private static ImportedOutline OutlineOf(string path, string option) => PartReader.Read(path).Outline
        ?? throw new InputException(path, null, $"is a ball specification; --{option} takes a flat outline or a panel.json");

    // Tells each seam on the message stream as it is done.
    private sealed class SeamLines(Terminal terminal) : IProgress<SeamEntry>
    {
        public void Report(SeamEntry value) => terminal.Say(Invariant(
            $"{EnumWord.Of(value.Ball.Seam.Curve)}: {value.Yield.PerThousandBalls.SquareMetres:0.00} m2 per thousand balls before losses"));
    }
}
