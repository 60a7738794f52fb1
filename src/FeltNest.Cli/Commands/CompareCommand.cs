using System.CommandLine;
using FeltNest.Ball;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Cost;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Compare;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Offers;
using FeltNest.Files.Outlines;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Report.Compare;

namespace FeltNest.Cli.Commands;

/// <summary><c>compare BALL|OUTLINE --widths|--width-range|--offers</c>: felt and cost of widths or offers side by side.</summary>
internal sealed class CompareCommand
{
    private static readonly string[] Names = ["compare.json", "compare.csv", "compare.svg", "compare.png", "compare.html"];

    private readonly Option<IReadOnlyList<double>?> widths = new("--widths")
    {
        Description = "Roll widths, each searched by all ways.",
        HelpName = "A,B,C",
        CustomParser = WidthList.List,
    };
    private readonly Option<IReadOnlyList<double>?> range = new("--width-range")
    {
        Description = "Many roll widths, laid in parallel rows from one set of tables.",
        HelpName = "FROM:TO:STEP",
        CustomParser = WidthList.Range,
    };
    private readonly Option<string?> offers = new("--offers")
    {
        Description = "Offers of felt (CSV), each searched by all ways on its guaranteed width.",
        HelpName = "FILE",
    };
    private readonly Option<string?> costs = new("--costs") { Description = "What the shop knows of its costs (JSON).", HelpName = "FILE" };
    private readonly Option<string?> life = new("--life")
    {
        Description = "Life of the die by its readings (life.json of 'die --readings'): goes before die.lifeStrikes of --costs.",
        HelpName = "FILE",
    };
    private readonly Option<string?> keepDie = new("--keep-die")
    {
        Description = "A die that is there already, as a layout or as a drawing (SVG, DXF) with a loop a cavity: its rows on every "
            + "width, and when a new die pays.",
        HelpName = "LAYOUT|DRAWING",
    };

    private readonly Option<double> feed = new("--keep-feed")
    {
        Description = "Feed of a drawn die: length of roll after which it strikes again.",
        HelpName = "length",
        CustomParser = LengthText.Positive,
    };

    private readonly Terminal terminal;
    private readonly BallOptions balls;
    private readonly LayoutOptions options;
    private readonly ShopOptions shop;
    private readonly CommonOptions common;

    private CompareCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        balls = new BallOptions(command, takesOutline: true);
        foreach (Option option in (Option[])[widths, range, offers, costs, life, keepDie, feed])
        {
            command.Add(option);
        }

        options = new LayoutOptions(command, takesWidth: false);
        shop = new ShopOptions(command, takesSecond: false);
        common = new CommonOptions(command);
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new("compare", "Felt per thousand balls and cost of widths or offers, side by side.");
        CompareCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        Answer answer = new(terminal, parse, common);
        RequireOne(parse);
        if (options.IsJoint(parse))
        {
            throw new InputException(null, "--warp-angle", "'joint' belongs to layout: here design, free or degrees");
        }

        LayoutPart part = PartOf(parse, answer.Quiet);
        List<string> notes = [.. balls.Assumed(parse)];
        CostInputs? known = WithLife(parse.GetValue(costs) is { } file ? CostsReader.Read(file) : null, parse.GetValue(life), notes);
        LayoutRequest lay = shop.Applied(parse, options.Request(parse, part));
        (string compared, CompareCase[] cases) = Cases(parse, lay);
        RollLayout? kept = KeptDie(parse, lay, answer.Quiet);
        double? seconds = options.Seconds(parse);
        ResultFolder results = new(
            parse.GetValue(common.Out)
                ?? DefaultFolder.OfCompare(
                    balls.NamedPath(parse), compared, parse.GetValue(costs), parse.GetValue(life), parse.GetValue(keepDie),
                    parse.GetValue(feed), lay, options.Usual(lay), seconds), parse.GetValue(
                    common.Force));
        results.Prepare(answer.Named(Names));

        using CancellationTokenSource capped = options.Capped(parse, terminal, stop);
        CompareQuestion question = new(lay, cases, parse.GetValue(range) is not null, known, kept);
        Comparison comparison = CompareStudy.Run(question, answer.Quiet ? null : new CompareLine(terminal, cases.Length), capped.Token);
        terminal.HandOver.Begin();
        Sheet sheet = CompareSheet.Draw(comparison);
        byte[] text = CompareWriter.Json(comparison);
        byte[] picture = SvgWriter.Write(sheet);
        return answer.Give(
            results,
            [
                (Names[0], text), (Names[1], CompareTable.Csv(comparison)), (Names[2], picture), (Names[3], PngWriter.Write(sheet)),
                (Names[4], ComparePage.Html(comparison, picture)),
            ],
            CompareReport.Text(comparison), notes, comparison.CutShort, stop);
    }

    // What readings show of a die goes before what the costs file assumes, whose range then says nothing more.
    private static CostInputs? WithLife(CostInputs? known, string? path, List<string> notes)
    {
        if (path is null)
        {
            return known;
        }

        if (known?.Die is not { } die)
        {
            throw new InputException(
                null, "--life",
                known is null ? "goes with --costs: a life alone costs nothing" : "wants the price of the die: the costs file has no die");
        }

        LifeInput read = LifeReader.Read(path);
        notes.Add(
            $"note: life of the die {read.LifeStrikes} strikes by the readings of {read.Die} in {path}, before the {die.LifeStrikes} of "
                + $"the costs file");
        if (read.SupersededBy is { } newer)
        {
            notes.Add($"warning: {path}: {read.Die} is superseded by {newer}");
        }

        return known with
        {
            Die = die with { LifeStrikes = read.LifeStrikes, LifeOf = read.Die },
            Ranges = [.. known.Ranges.Where(r => r.Field != "die.lifeStrikes")],
        };
    }

    private void RequireOne(ParseResult parse)
    {
        int given =
            (parse.GetValue(widths) is null ? 0 : 1) + (parse.GetValue(range) is null ? 0 : 1) + (parse.GetValue(offers) is null ? 0 : 1);
        if (given != 1)
        {
            throw new InputException(null, "compare", given == 0
                ? "needs something to compare: --widths 1370,1500, --width-range 1300:1600:5 or --offers FILE"
                : "takes one of --widths, --width-range and --offers at a time");
        }
    }

    private RollLayout? KeptDie(ParseResult parse, LayoutRequest lay, bool quiet)
    {
        string? path = parse.GetValue(keepDie);
        bool drawn = path is not null && DrawnDie.IsDrawing(path);
        bool fed = parse.GetResult(feed) is not null;
        if (drawn != fed)
        {
            throw new InputException(null, "--keep-feed", drawn
                ? "is missing: a drawing does not say after what length of roll its die strikes again"
                : "belongs to a drawn die (--keep-die with SVG or DXF): a layout has its own repeat");
        }

        if (!drawn)
        {
            return path is null ? null : LayoutReader.Read(path).Layout;
        }

        List<string> notes = [];
        RollLayout die = DrawnDie.Read(path!, parse.GetValue(feed), lay.Trims, notes);
        foreach (string note in quiet ? [] : notes)
        {
            terminal.Say($"note: {path}: {note}");
        }

        return die;
    }

    private (string Compared, CompareCase[] Cases) Cases(ParseResult parse, LayoutRequest lay)
    {
        if (parse.GetValue(offers) is { } file)
        {
            IReadOnlyList<FeltOffer> read = OffersReader.Read(file);
            return (DefaultFolder.FileWord(file), [.. read.Select(offer => CompareCase.Of(offer, lay.Trims))]);
        }

        bool scanned = parse.GetValue(range) is not null;
        IReadOnlyList<double> all = parse.GetValue(range) ?? parse.GetValue(widths)!;
        return (DefaultFolder.WidthsWord(all, scanned), [.. all.Select(width => CompareCase.Of(width, lay.Trims))]);
    }

    private LayoutPart PartOf(ParseResult parse, bool quiet)
    {
        PartInput read = balls.Read(parse);
        if (read.Ball?.Ball is BallSpec ball)
        {
            return CoverPart.Of(ball, PanelFlattener.Flatten(ball));
        }

        ImportedOutline outline = read.Outline!;
        foreach (string note in quiet ? [] : outline.Notes)
        {
            terminal.Say($"note: {balls.Path(parse)}: {note}");
        }

        return outline.Part;
    }
}
