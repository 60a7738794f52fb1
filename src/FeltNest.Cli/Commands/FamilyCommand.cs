using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Cli.Progress;
using FeltNest.Files.Csv;
using FeltNest.Files.Families;
using FeltNest.Layout;
using FeltNest.Runs;

namespace FeltNest.Cli.Commands;

/// <summary><c>family FAMILY --widths|--width-range|--offers --costs</c>: which widths to stock for several balls.</summary>
internal sealed class FamilyCommand
{
    private const int UsualMostWidths = 3;
    private const int GreatestMostWidths = 10;

    private readonly Argument<string> list = new("FAMILY")
    {
        Description = "The balls (CSV): name, ball, ballsPerYear, and where they differ gapMm and edgeMm.",
        HelpName = "FAMILY",
    };
    private readonly Option<string> costs = new("--costs")
    {
        Description = "What the shop knows of its costs (JSON), the price of the felt where no offers are given, and widthYearCost.",
        HelpName = "FILE",
        Required = true,
    };
    private readonly Option<int> most = new("--most-widths")
    {
        Description = "Plans are made for one width, two, up to so many, and for any number.",
        HelpName = "n",
        DefaultValueFactory = _ => UsualMostWidths,
        CustomParser = NumberText.WholeWithin(1, GreatestMostWidths),
    };

    private readonly Terminal terminal;
    private readonly LayoutOptions options;
    private readonly WidthOptions compared;
    private readonly ShopOptions shop;
    private readonly CommonOptions common;

    private FamilyCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        command.Add(list);
        compared = new WidthOptions(command, " for each ball");
        foreach (Option option in (Option[])[costs, most])
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
        Command command = new("family", "Which widths to stock and which dies to own for several balls, so that a year costs least.");
        FamilyCommand made = new(terminal, command);
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

        FamilyAsk asked = Asked(parse);
        FamilyRun run = new(asked);
        run.Progress = answer.Quiet ? null : new FamilyLine(terminal, run.Question);
        LayoutRequest first = run.Question.Balls[0].Lay;
        string folder = parse.GetValue(common.Out)
            ?? DefaultFolder.OfFamily(
                parse.GetValue(list)!, compared.Word(parse), asked.CostsFile, asked.MostWidths, asked.Lay(first.Part),
                options.Usual(first), options.Seconds(parse));
        using CancellationTokenSource capped = options.Capped(parse, terminal, stop);
        return answer.Give(run, folder, parse.GetValue(common.Force), capped.Token, stop);
    }

    private FamilyAsk Asked(ParseResult parse)
    {
        ListReading lists = compared.Lists(parse);
        return new FamilyAsk
        {
            Balls = FamilyReader.Read(lists.Open(parse.GetValue(list)!)),
            Lay = part => shop.Applied(parse, options.Request(parse, part)),
            WidthsMm = compared.WidthsMm(parse),
            Scanned = compared.Scanned(parse),
            OffersFile = compared.OffersFile(parse),
            Offers = compared.Offers(parse, lists),
            ListNotes = lists.Notes,
            CostsFile = parse.GetValue(costs)!,
            MostWidths = parse.GetValue(most),
        };
    }
}
