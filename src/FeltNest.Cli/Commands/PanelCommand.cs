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
internal sealed class PanelCommand
{
    // Roll and effort of a study of waists when none is given: a common felt width, and little work a waist, as there are many.
    private const double StudyWidthMm = 1500;
    private const int StudyEffort = 1;

    private readonly Option<IReadOnlyList<double>?> waists = new("--waist-range")
    {
        Description = "Waists to compare by strain and felt instead of one panel; the options from --width on belong to it.",
        HelpName = "from:to:step",
        CustomParser = WaistRange.Parse,
    };

    private readonly Option<bool> seams = new("--seams")
    {
        Description = "Seam families side by side at the ball's waist instead: strains, panel and felt; the options from --width on "
            + "belong to it too.",
    };

    private readonly Option<string?> wrap = new("--wrap")
    {
        Description = "Lay this flat outline (or panel.json) on the ball instead: gap or overlap with the edge free, strains and "
            + "pull with the edge on the seam.",
        HelpName = "OUTLINE",
    };

    private readonly Option<string?> proven = new("--proven")
    {
        Description = "Fit the ball to this measured panel instead: neutral layer, waist and edge limit that reproduce it best, and "
            + "how well it determines them.",
        HelpName = "OUTLINE",
    };

    private readonly Option<bool> gapBudget = new("--gap-budget")
    {
        Description = "The gap round the seam instead, with its spread by the tolerances of the ball file: worst case, root sum square, "
            + "balls within the adhesive's range, and which tolerance to buy down first.",
    };
    private readonly LotOptions lot;
    private readonly HoldOption hold;
    private readonly Terminal terminal;
    private readonly BallOptions balls;
    private readonly Option[] jobs;
    private readonly TrialOptions trial;
    private readonly SeamDesignOptions design;
    private readonly ScanOption scan;
    private readonly LayoutOptions layout;
    private readonly CommonOptions common;

    private PanelCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        balls = new BallOptions(command, takesOutline: false);
        Option[] plain = [waists, seams, wrap, proven, gapBudget];
        foreach (Option option in plain)
        {
            command.Add(option);
        }

        trial = new TrialOptions(command);
        design = new SeamDesignOptions(command);
        jobs = [.. plain, .. trial.Jobs, design.Job];

        lot = new LotOptions(command);
        hold = new HoldOption(command);
        scan = new ScanOption(command);
        layout = new LayoutOptions(command, StudyWidthMm, StudyEffort);
        common = new CommonOptions(command);
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new(
            "panel",
            "The flat panel of a ball: outline, strains, fit to the rules; or waists or seams compared, seams designed for least felt, an "
                + "outline laid on the ball, the ball fitted to a proven panel, a trial wrap read, the seam gap budgeted.");
        PanelCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        string path = balls.NamedPath(parse);
        RequireOneJob(parse);
        BallInput input = balls.ReadBall(parse);
        Answer answer = new(terminal, parse, common);
        using CancellationTokenSource capped = layout.Capped(parse, terminal, stop);
        (IRun run, string folder) = Asked(parse, input, path, !answer.Quiet);
        return answer.Give(
            run, parse.GetValue(common.Out) ?? folder, parse.GetValue(common.Force), capped.Token, stop, balls.Assumed(parse));
    }

    private void RequireOneJob(ParseResult parse)
    {
        Option[] given = [.. jobs.Where(option => parse.GetResult(option) is { Implicit: false })];
        if (given.Length > 1)
        {
            throw new InputException(null, given[1].Name, $"cannot go with {given[0].Name}: give one of them");
        }

        bool designs = given.Contains(design.Job);
        if (!designs && design.FirstGiven(parse) is { } limit)
        {
            throw new InputException(null, limit, $"belongs to {design.Job.Name}: give it too");
        }

        if (!given.Contains(wrap) && !given.Contains(proven) && scan.Of(parse) is not null)
        {
            throw new InputException(null, scan.Name, $"belongs to {wrap.Name} and {proven.Name}: give one of them too");
        }

        if (!given.Contains(wrap) && lot.FirstGiven(parse) is { } ofLot)
        {
            throw new InputException(null, ofLot, $"belongs to {wrap.Name}: give it too");
        }

        if (!given.Contains(proven) && hold.IsGiven(parse))
        {
            throw new InputException(null, hold.Name, $"belongs to {proven.Name}: give it too");
        }

        if (!given.Contains(waists) && !given.Contains(seams) && !designs && layout.FirstGiven(parse) is { } stray)
        {
            throw new InputException(
                null, stray, "belongs to --waist-range, --seams and --seam-design: give one of them too, or use the layout command");
        }
    }

    private (IRun Run, string Folder) Asked(ParseResult parse, BallInput input, string path, bool loud)
    {
        BallSpec ball = input.Ball;
        if (parse.GetValue(wrap) is { } laid)
        {
            return Laid(parse, ball, path, laid);
        }

        if (parse.GetValue(proven) is { } measured)
        {
            return (Fitted(parse, ball, measured), DefaultFolder.OfOutline(path, "proven", measured));
        }

        if (trial.Asked(parse, ball, path, common.Json) is { } tried)
        {
            return tried;
        }

        if (parse.GetValue(gapBudget))
        {
            return (new GapBudgetRun { Ball = ball }, DefaultFolder.OfGapBudget(path));
        }

        if (parse.GetValue(waists) is { } range)
        {
            return Waists(parse, ball, path, range, loud);
        }

        if (design.IsAsked(parse))
        {
            return Designed(parse, ball, path, loud);
        }

        return parse.GetValue(seams)
            ? Seams(parse, ball, path, loud)
            : (new PanelRun { Ball = ball, Assumed = input.Assumed }, DefaultFolder.OfPanel(path));
    }

    private ProvenRun Fitted(ParseResult parse, BallSpec ball, string measured) => new()
    {
        Ball = hold.Applied(parse, ball),
        Outline = OutlineOf(measured, "proven", scan.Of(parse)),
        OutlineFile = measured,
        Hold = hold.Of(parse),
    };

    private (IRun Run, string Folder) Laid(ParseResult parse, BallSpec ball, string path, string laid)
    {
        ImportedOutline outline = OutlineOf(laid, "wrap", scan.Of(parse));
        if (lot.Asked(parse) is not { } asked)
        {
            WrapRun wrapped = new() { Ball = ball, Outline = outline, OutlineFile = laid };
            return (wrapped, DefaultFolder.OfOutline(path, "wrap", laid));
        }

        LotRun run = new() { Ball = ball, Outline = outline, OutlineFile = laid, LotFile = asked.File, Glue = asked.Glue };
        return (run, DefaultFolder.OfLot(path, laid, asked.File));
    }

    private (IRun Run, string Folder) Waists(ParseResult parse, BallSpec ball, string path, IReadOnlyList<double> range, bool loud)
    {
        LayoutRequest named = Named(parse, ball);
        WaistRun run = new()
        {
            Ball = ball,
            WaistsMm = range,
            Lay = part => layout.Request(parse, part),
            Progress = loud ? new WaistLine(terminal, range.Count) : null,
        };
        return (run, DefaultFolder.OfWaists(path, range, named, layout.Usual(named), layout.Seconds(parse)));
    }

    private (IRun Run, string Folder) Seams(ParseResult parse, BallSpec ball, string path, bool loud)
    {
        LayoutRequest named = Named(parse, ball);
        SeamsRun run = new()
        {
            Ball = ball,
            Lay = part => layout.Request(parse, part),
            Progress = loud ? new SeamLines(terminal) : null,
        };
        return (run, DefaultFolder.OfSeams(path, named, layout.Usual(named), layout.Seconds(parse)));
    }

    private (IRun Run, string Folder) Designed(ParseResult parse, BallSpec ball, string path, bool loud)
    {
        LayoutRequest named = Named(parse, ball);
        SeamQuestion question = design.Question(parse, ball, layout.IsJoint(parse));
        SeamDesignRun run = new()
        {
            Question = question,
            Lay = part => layout.Request(parse, part),
            Progress = loud ? new MarkLines(terminal) : null,
        };
        string word = SeamDesignOptions.FolderWord(question);
        return (run, DefaultFolder.OfSeamDesign(path, word, named, layout.Usual(named), layout.Seconds(parse)));
    }

    // The folder is named by the question alone; the part does not matter for it.
    private LayoutRequest Named(ParseResult parse, BallSpec ball) =>
        layout.Request(parse, CoverPart.Of(ball, PanelFlattener.Flatten(ball)));

    private static ImportedOutline OutlineOf(string path, string option, double? dpi) => PartReader.Read(path, null, dpi).Outline
        ?? throw new InputException(path, null, $"is a ball specification; --{option} takes a flat outline or a panel.json");

    // Tells each seam on the message stream as it is done.
    private sealed class SeamLines(Terminal terminal) : IProgress<SeamEntry>
    {
        public void Report(SeamEntry value) => terminal.Say(Invariant(
            $"{EnumWord.Of(value.Ball.Seam.Curve)}: {value.Yield.PerThousandBalls.SquareMetres:0.00} m2 per thousand balls before losses"));
    }

    // Tells each designed seam on the message stream as it is measured.
    private sealed class MarkLines(Terminal terminal) : IProgress<SeamMark>
    {
        public void Report(SeamMark value) => terminal.Say(Invariant(
            $"{value.StretchLimitPercent:0.##} % of stretch: {value.Roll.RollSquareMetres:0.00} m2 per thousand balls before losses"));
    }
}
