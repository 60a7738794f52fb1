using System.CommandLine;
using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Design.SeamDesign;

namespace FeltNest.Cli.Options;

/// <summary>Options of a design of seams: the limits it keeps and the numbers it has.</summary>
internal sealed class SeamDesignOptions
{
    // Waves taken when none are given: with the waist four numbers; further waves save at most a fifth of a per cent more.
    private const int UsualWaves = 3;

    private readonly Option<bool> design = new("--seam-design")
    {
        Description = "Design seams for the least felt at each limit of stretch instead: the front, the seam families beside it, and a "
            + "ball file for each limit; the options from --width on belong to it too.",
    };

    private readonly Option<IReadOnlyList<double>> limits = new("--stretch-limits")
    {
        Description = "Limits of stretch for --seam-design, per cent, or one of them.",
        HelpName = "from:to:step",
        DefaultValueFactory = _ => StretchLimits.Usual,
        CustomParser = StretchLimits.Parse,
    };

    private readonly Option<double?> compression = new("--most-compression")
    {
        Description = "Greatest principal compression anywhere for --seam-design; none binds when not given. The limit along the edge is "
            + "the ball's own.",
        HelpName = "percent",
        CustomParser = result => NumberText.Within(0.1, 100, "%")(result),
    };

    private readonly Option<double?> radius = new("--least-radius")
    {
        Description = "Least radius of the seam for --seam-design.",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    private readonly Option<double?> run = new("--least-run")
    {
        Description = "Least distance between neighbouring runs of the seam for --seam-design.",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    private readonly Option<double?> gap = new("--most-gap")
    {
        Description = "Greatest gap that the fitter may feel with the edge free, for --seam-design.",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    private readonly Option<int> waves = new("--seam-waves")
    {
        Description = "Waves of a designed seam beside its waist.",
        HelpName = "n",
        DefaultValueFactory = _ => UsualWaves,
        CustomParser = NumberText.WholeWithin(SeamFrontStudy.WaveCount.Fewest, SeamFrontStudy.WaveCount.Most),
    };

    private readonly Option<bool> unmirrored = new("--unmirrored")
    {
        Description = "Let a designed seam leave its mirrors and keep the half-turns alone: the two panels stay the same part.",
    };

    private readonly Option[] own;

    /// <summary>Adds the options to a command.</summary>
    public SeamDesignOptions(Command command)
    {
        own = [limits, compression, radius, run, gap, waves, unmirrored];
        command.Add(design);
        foreach (Option option in own)
        {
            command.Add(option);
        }
    }

    /// <summary>The option that asks for a design.</summary>
    public Option Job => design;

    /// <summary>Whether a design is asked for.</summary>
    public bool IsAsked(ParseResult parse) => parse.GetValue(design);

    /// <summary>Name of the first option that was typed and belongs to a design, or null.</summary>
    public string? FirstGiven(ParseResult parse) => Array.Find(own, option => parse.GetResult(option) is { Implicit: false })?.Name;

    /// <summary>What to ask for a ball.</summary>
    /// <param name="parse">The command line.</param>
    /// <param name="ball">The ball.</param>
    /// <param name="turnsWarp">Whether its angle to the warp is to be found too.</param>
    public SeamQuestion Question(ParseResult parse, BallSpec ball, bool turnsWarp) => new()
    {
        Ball = ball,
        StretchLimitsPercent = parse.GetValue(limits)!,
        Limits = new SeamLimits
        {
            StretchPercent = 0,
            CompressionPercent = parse.GetValue(compression),
            LeastRadiusMm = parse.GetValue(radius),
            LeastRunMm = parse.GetValue(run),
            MostGapMm = parse.GetValue(gap),
        },
        Waves = parse.GetValue(waves),
        Unmirrored = parse.GetValue(unmirrored),
        TurnsWarp = turnsWarp,
    };

    /// <summary>What sets a design apart, for the name of its folder.</summary>
    public static string FolderWord(SeamQuestion asked)
    {
        IReadOnlyList<double> steps = asked.StretchLimitsPercent;
        string range = steps.Count > 1
            ? FormattableString.Invariant($"{steps[0]}to{steps[^1]}-by{Math.Round(steps[1] - steps[0], 9)}")
            : FormattableString.Invariant($"{steps[0]}");
        return $"seam-design{range}{Word("c", asked.Limits.CompressionPercent)}{Word("r", asked.Limits.LeastRadiusMm)}"
            + $"{Word("run", asked.Limits.LeastRunMm)}{Word("gap", asked.Limits.MostGapMm)}"
            + $"{Word("waves", asked.Waves == UsualWaves ? null : asked.Waves)}{(asked.Unmirrored ? "-unmirrored" : string.Empty)}"
            + (asked.TurnsWarp ? "-joint" : string.Empty);
    }

    private static string Word(string letter, double? value) =>
        value is { } number ? FormattableString.Invariant($"-{letter}{Math.Round(number, 9)}") : string.Empty;
}
