using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Files.Csv;
using FeltNest.Runs.Dies;

namespace FeltNest.Cli.Commands;

/// <summary>Options by which a cut panel, or a die's life, is judged.</summary>
internal sealed class MeasuredOptions
{
    private readonly ScanOption scan;
    private readonly ListOptions lists;

    /// <summary>Adds the options to a command.</summary>
    public MeasuredOptions(Command command)
    {
        command.Add(Measured);
        command.Add(AsMade);
        command.Add(Position);
        command.Add(Profile);
        command.Add(Uncertainty);
        command.Add(Steepness);
        command.Add(InFrame);
        command.Add(Part);
        scan = new ScanOption(command);
        command.Add(Readings);
        command.Add(Newer);
        command.Add(QuoteAnswer);
        command.Add(Costs);
        lists = new ListOptions(command);
    }

    /// <summary>Refuses options that belong to another job of the command than the one asked for.</summary>
    /// <param name="parse">What was typed.</param>
    /// <param name="design">Options that belong to the design of a die.</param>
    /// <exception cref="InputException">Names the option that cannot be used, and what it belongs to.</exception>
    public void RefuseStrays(ParseResult parse, IEnumerable<Option> design)
    {
        Option[] jobs = [.. ((Option[])[Measured, AsMade, Readings, QuoteAnswer]).Where(job => Given(parse, job))];
        if (jobs.Length > 1)
        {
            throw new InputException(null, jobs[1].Name, $"cannot go with {jobs[0].Name}: give one of them");
        }

        foreach ((Option[] owners, Option[] own) in ((Option[], Option[])[])
            [
                ([Measured, AsMade], [Profile, Uncertainty, Steepness, InFrame]), ([Measured], [Part]), ([AsMade], [Position]),
                ([Readings], [Newer]), ([QuoteAnswer], [Costs]),
            ])
        {
            if (!owners.Intersect(jobs).Any() && own.FirstOrDefault(option => Given(parse, option)) is { } stray)
            {
                string owner = string.Join(" or ", owners.Select(o => o.Name));
                throw new InputException(null, stray.Name, $"belongs to {owner}: give it too");
            }
        }

        if (jobs.Length == 1 && design.FirstOrDefault(option => Given(parse, option)) is { } other)
        {
            throw new InputException(null, other.Name, $"belongs to the design of a die and cannot go with {jobs[0].Name}");
        }
    }

    private static bool Given(ParseResult parse, Option option) => parse.GetResult(option) is { Implicit: false };

    /// <summary>The question of a first article.</summary>
    public FirstArticleAsk Asked(ParseResult parse, string wanted, string points) => new()
    {
        WantedFile = wanted,
        PointsFile = points,
        ProfileMm = parse.GetValue(Profile),
        UncertaintyMm = parse.GetValue(Uncertainty),
        Steepness = parse.GetValue(Steepness),
        InFrame = parse.GetValue(InFrame),
        Part = parse.GetValue(Part),
        Dpi = scan.Of(parse),
    };

    /// <summary>The question of a die as made.</summary>
    public MadeDieAsk AskedOfDie(ParseResult parse, string die, string points) => new()
    {
        DieFile = die,
        MeasuredFile = points,
        ProfileMm = parse.GetValue(Profile),
        PositionMm = parse.GetValue(Position),
        UncertaintyMm = parse.GetValue(Uncertainty),
        Steepness = parse.GetValue(Steepness),
        InFrame = parse.GetValue(InFrame),
        Dpi = scan.Of(parse),
    };

    /// <summary>The costs that go with an answer.</summary>
    /// <exception cref="InputException">There are none.</exception>
    public string CostsOf(ParseResult parse) =>
        parse.GetValue(Costs) ?? throw new InputException(null, Costs.Name, "is needed: the answer's price goes into a costs file");

    /// <summary>How readings are read.</summary>
    public ListReading Lists(ParseResult parse) => lists.Asked(parse);

    /// <summary>Measured points.</summary>
    public Option<string?> Measured { get; } = new("--measured")
    {
        Description = "Points measured round a cut panel (CSV u,v in mm): laid on the outline and judged.",
        HelpName = "file",
    };

    /// <summary>A die as made.</summary>
    public Option<string?> AsMade { get; } = new("--as-made")
    {
        Description = "The die as it was made: points of its cavities in one frame (CSV cavity,u,v), a DXF of its edges, or a picture of "
            + "the blanks as they lie in it: all edges and all places are judged, and what to set next time is proposed.",
        HelpName = "file",
    };

    /// <summary>Position tolerance.</summary>
    public Option<double?> Position { get; } = new("--position")
    {
        Description = "With --as-made: position tolerance of a cavity, the diameter of the circle that its middle lies in (default: the "
            + "die's own).",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    /// <summary>Tolerance.</summary>
    public Option<double?> Profile { get; } = new("--profile")
    {
        Description = "With --measured or --as-made: profile tolerance, the width of the zone (default: the die's own, or 1.2 mm for a "
            + "panel "
            + "of an outline).",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    /// <summary>Uncertainty.</summary>
    public Option<double?> Uncertainty { get; } = new("--uncertainty")
    {
        Description = "With --measured or --as-made: expanded uncertainty of a measured distance (k = 2), so that the verdict follows "
            + "ISO 14253-1 "
            + "(default: unknown, and said so).",
        HelpName = "mm",
        CustomParser = result => NumberText.Within(0.0001, 10, "mm")(result),
    };

    /// <summary>Steepness.</summary>
    public Option<double?> Steepness { get; } = new("--steepness")
    {
        Description = "With --measured or --as-made: steepest change of the distance along the edge, mm a mm; what may hide between "
            + "points follows "
            + "from it (default: 0.05).",
        HelpName = "number",
        CustomParser = result => NumberText.Within(0.001, 1, "mm a mm")(result),
    };

    /// <summary>Frame.</summary>
    public Option<bool> InFrame { get; } = new("--in-frame")
    {
        Description = "With --measured or --as-made: the points stand in the frame of the drawing, as with a datum: they are neither "
            + "turned nor moved.",
    };

    /// <summary>Part of a die that cuts several.</summary>
    public Option<string?> Part { get; } = new("--part")
    {
        Description = "With --measured and a die that cuts several parts: the letter of the part measured (a, b ...).",
        HelpName = "letter",
    };

    /// <summary>Readings of a die.</summary>
    public Option<string?> Readings { get; } = new("--readings")
    {
        Description = "First-article readings of a die.json by date and strikes (CSV): drift, and when to rule again.",
        HelpName = "file",
    };

    /// <summary>A maker's answer.</summary>
    public Option<string?> QuoteAnswer { get; } = new("--quote-answer")
    {
        Description = "The maker's answer to the request for a quote (JSON): its price and life go into a new costs file.",
        HelpName = "file",
    };

    /// <summary>Costs that the answer goes into.</summary>
    public Option<string?> Costs { get; } = new("--costs")
    {
        Description = "With --quote-answer: the costs file that the answer goes into; it is not changed itself.",
        HelpName = "file",
    };

    /// <summary>A newer die.</summary>
    public Option<string?> Newer { get; } = new("--newer")
    {
        Description = "With --readings: a newer die.json; the older one is marked superseded where revision or edge differ.",
        HelpName = "file",
    };
}
