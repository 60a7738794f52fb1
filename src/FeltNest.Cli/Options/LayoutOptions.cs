using System.CommandLine;
using System.CommandLine.Parsing;
using FeltNest.Files;
using FeltNest.Layout;
using FeltNest.Layout.Limits;

namespace FeltNest.Cli.Options;

/// <summary>Options that say what is laid how.</summary>
internal sealed class LayoutOptions
{
    private const double UsualGap = 4;
    private const double UsualEdge = 15;
    private const int UsualSeed = 1;

    private readonly Option[] all;
    private readonly int usualEffort;

    private readonly Option<double> width = new("--width", "-w")
    {
        Description = "Width of the roll, both edges included.",
        HelpName = "length",
        CustomParser = LengthText.Positive,
    };

    private readonly Option<string?> roll = new("--roll")
    {
        Description = "A roll as measured (JSON) to lay out for, in place of --width: its least width; its length and faults are not used.",
        HelpName = "file",
    };

    private readonly Option<double> gap = new("--gap")
    {
        Description = "Least distance between any two cut edges; 0 is a common cut.",
        HelpName = "length",
        DefaultValueFactory = _ => UsualGap,
        CustomParser = LengthText.OrZero,
    };

    private readonly Option<EdgeTrims> edge = new("--edge")
    {
        Description = "Edge trim on each side, or lower and upper (12,20).",
        HelpName = "length[,length]",
        DefaultValueFactory = _ => EdgeTrims.Both(UsualEdge),
        CustomParser = EdgeText.Parse,
    };

    private readonly Option<WarpAngle?> warpAngle = new("--warp-angle")
    {
        Description = "Angle of the panels to the warp: design, free, degrees, or joint: panel and tilt found together (default: design "
            + "for a ball, free for an outline).",
        HelpName = "design|free|joint|degrees",
        CustomParser = WarpAngle.Parse,
    };

    private readonly Option<double> warpTolerance = new("--warp-tolerance")
    {
        Description = "How far a panel may lie off that angle, degrees.",
        HelpName = "degrees",
        DefaultValueFactory = _ => 0,
        CustomParser = NumberText.Within(ShopRanges.WarpTolerance),
    };

    private readonly Option<string> rows = new("--rows")
    {
        Description = "same: all panels parallel; alternate: rows at +a and -a; any: each row its own angle.",
        HelpName = "same|alternate|any",
        DefaultValueFactory = _ => EnumWord.Of(RowRule.Same),
        CustomParser = ParseRows,
    };

    private readonly Option<bool> oneWay = new("--one-way") { Description = "All panels point the same way along the nap: no half-turns." };

    private readonly Option<int> effort = new("--effort")
    {
        Description = "Work spent on the search, counted and not timed: about as many seconds on two cores, 1 to 1000.",
        HelpName = "n",
        CustomParser = NumberText.WholeWithin(1, LayoutLimits.MostEffort),
    };

    private readonly Option<double?> seconds = new("--seconds")
    {
        Description = "Wall-clock cap on the search; a search cut short is not promised to repeat.",
        HelpName = "s",
        CustomParser = result => NumberText.Within(0.01, 86400, "seconds")(result),
    };

    private readonly Option<int> seed = new("--seed")
    {
        Description = "Seed of the random part of the search.",
        HelpName = "n",
        DefaultValueFactory = _ => UsualSeed,
        CustomParser = NumberText.WholeWithin(0, int.MaxValue),
    };

    /// <summary>Adds the options to a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="usualWidthMm">Width taken when none is given; null asks for one.</param>
    /// <param name="usualEffort">Effort taken when none is given.</param>
    /// <param name="takesWidth">False for a command that has its own way of saying widths.</param>
    /// <param name="takesRoll">True for a command that lays out for a measured roll too.</param>
    public LayoutOptions(
        Command command, double? usualWidthMm = null, int usualEffort = 5, bool takesWidth = true, bool takesRoll = false)
    {
        this.usualEffort = usualEffort;
        effort.DefaultValueFactory = _ => usualEffort;
        width.Required = usualWidthMm is null && !takesRoll;
        if (usualWidthMm is { } usual)
        {
            width.DefaultValueFactory = _ => usual;
        }

        Option[] sizes = [.. takesWidth ? [width] : Array.Empty<Option>(), .. takesRoll ? [roll] : Array.Empty<Option>()];
        all = [.. sizes, gap, edge, warpAngle, warpTolerance, rows, oneWay, effort, seconds, seed];
        foreach (Option option in all)
        {
            command.Add(option);
        }

        if (takesRoll)
        {
            command.Validators.Add(OneSize);
        }
    }

    /// <summary>File of the measured roll to lay out for, or null.</summary>
    public string? RollFile(ParseResult parse) => parse.GetValue(roll);

    /// <summary>Name of the first of these options that was typed, or null.</summary>
    public string? FirstGiven(ParseResult parse) => Array.Find(all, option => parse.GetResult(option) is { Implicit: false })?.Name;

    /// <summary>Wall-clock cap, seconds, or null.</summary>
    public double? Seconds(ParseResult parse) => parse.GetValue(seconds);

    /// <summary>A token that the wall-clock cap stops too, where there is one; it counts from the start of the run.</summary>
    public CancellationTokenSource Capped(ParseResult parse, Terminal terminal, CancellationToken stop) =>
        Seconds(parse) is { } cap ? terminal.Clock.Capped(cap, stop) : CancellationTokenSource.CreateLinkedTokenSource(stop);

    /// <summary>What to ask of the search for a part.</summary>
    /// <exception cref="InputException">The design angle is asked for and the part has none.</exception>
    public LayoutRequest Request(ParseResult parse, LayoutPart part) => new()
    {
        Part = part,
        RollWidthMm = parse.GetValue(width),
        Trims = parse.GetValue(edge),
        GapMm = parse.GetValue(gap),
        Rules = new LayoutRules(
            AngleOf(parse.GetValue(warpAngle), part), parse.GetValue(warpTolerance), EnumWord.Find<RowRule>(parse.GetValue(rows)!)!.Value,
            parse.GetValue(oneWay)),
        Effort = parse.GetValue(effort),
        Seed = parse.GetValue(seed),
    };

    // A width and a measured roll both say how wide.
    private void OneSize(CommandResult command)
    {
        bool byWidth = command.GetResult(width) is { Implicit: false };
        bool byRoll = command.GetResult(roll) is { Implicit: false };
        if (byWidth == byRoll)
        {
            command.AddError(
                byWidth
                    ? $"{width.Name}, {roll.Name}: both say how wide the roll is: give one of them"
                    : $"{width.Name}, {roll.Name}: give the width of the roll, or a roll as measured");
        }
    }

    /// <summary>The same request with every setting but the width and the gap at its default.</summary>
    public LayoutRequest Usual(LayoutRequest request) => request with
    {
        Trims = EdgeTrims.Both(UsualEdge),
        Effort = usualEffort,
        Seed = UsualSeed,
        Rules = new LayoutRules(request.Part.WarpAngleDeg, 0, RowRule.Same, false),
    };

    /// <summary>True when panel and tilt are to be found together.</summary>
    public bool IsJoint(ParseResult parse) => parse.GetValue(warpAngle) is { Joint: true };

    private static double? AngleOf(WarpAngle? asked, LayoutPart part)
    {
        if (asked is { Design: true } && part.Ball is null)
        {
            throw new InputException(
                null, "--warp-angle",
                "'design' needs a ball, and so does 'joint': a plain outline has no design angle; use free or degrees");
        }

        // A ball's panel is laid as designed unless told otherwise; where any angle serves, and for a plain outline, that is free.
        return asked is null or { Design: true } ? part.WarpAngleDeg : asked.Value.Degrees;
    }

    private static string ParseRows(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (EnumWord.Find<RowRule>(text) is null)
        {
            result.AddError($"--rows: '{text}' is not allowed: {string.Join(", ", EnumWord.All<RowRule>())}");
        }

        return text;
    }
}
