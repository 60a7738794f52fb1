using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Files.Csv;
using FeltNest.Layout;
using FeltNest.Runs;

namespace FeltNest.Cli.Commands;

/// <summary><c>compare BALL|OUTLINE --widths|--width-range|--offers</c>: felt and cost of widths or offers side by side.</summary>
internal sealed class CompareCommand
{
    // More than all makers together sell in many years.
    private const double MostBalls = 1e11;

    private readonly Option<string?> costs = new("--costs") { Description = "What the shop knows of its costs (JSON).", HelpName = "FILE" };
    private readonly Option<double?> bought = new("--balls")
    {
        Description = "Good balls that the felt is bought for: whole rolls, least length, tiers and what is left over then count. Left "
            + "out, "
            + "annualBalls of --costs.",
        HelpName = "number",
    };
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
    private readonly WidthOptions compared;
    private readonly ShopOptions shop;
    private readonly CommonOptions common;

    private CompareCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        balls = new BallOptions(command, takesOutline: true);
        compared = new WidthOptions(command);
        foreach (Option option in (Option[])[costs, bought, life, keepDie, feed])
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
        compared.RequireOne(parse);
        if (options.IsJoint(parse))
        {
            throw new InputException(AskedFor.WarpAngle, "'joint' belongs to layout: here design, free or degrees");
        }

        LaidPart part = balls.ReadPart(parse);
        LayoutRequest lay = shop.Applied(parse, options.Request(parse, part.Part));
        CompareAsk asked = Asked(parse, part, lay);
        int count = asked.Offers?.Count ?? asked.WidthsMm.Count;
        CompareRun run = new(asked) { Progress = answer.Quiet ? null : new CompareLine(terminal, count) };
        string folder = parse.GetValue(common.Out)
            ?? DefaultFolder.OfCompare(
                balls.NamedPath(parse), compared.Word(parse), asked.CostsFile, asked.LifeFile, asked.KeptDieFile,
                parse.GetValue(feed), asked.Balls, lay, options.Usual(lay), options.Seconds(parse));
        using CancellationTokenSource capped = options.Capped(parse, terminal, stop);
        return answer.Give(run, folder, parse.GetValue(common.Force), capped.Token, stop, balls.Assumed(parse));
    }

    private CompareAsk Asked(ParseResult parse, LaidPart part, LayoutRequest lay)
    {
        ListReading lists = compared.Lists(parse);
        return new CompareAsk
        {
            Part = part,
            Lay = lay,
            WidthsMm = compared.WidthsMm(parse),
            Scanned = compared.Scanned(parse),
            OffersFile = compared.OffersFile(parse),
            Offers = compared.Offers(parse, lists),
            ListNotes = lists.Notes,
            CostsFile = parse.GetValue(costs),
            Balls = BallsAsked(parse),
            LifeFile = parse.GetValue(life),
            KeptDieFile = parse.GetValue(keepDie),
            KeptFeedMm = parse.GetResult(feed) is null ? null : parse.GetValue(feed),
        };
    }

    private double? BallsAsked(ParseResult parse)
    {
        if (parse.GetValue(bought) is { } balls)
        {
            InputException.RequireWithin(AskedFor.Balls, balls, 1, MostBalls, "balls");
        }

        return parse.GetValue(bought);
    }
}
