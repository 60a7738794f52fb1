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
        command.Add(Profile);
        command.Add(Part);
        scan = new ScanOption(command);
        command.Add(Readings);
        command.Add(Newer);
        lists = new ListOptions(command);
    }

    /// <summary>The question of a first article.</summary>
    public FirstArticleAsk Asked(ParseResult parse, string wanted, string points) => new()
    {
        WantedFile = wanted,
        PointsFile = points,
        ProfileMm = parse.GetValue(Profile),
        Part = parse.GetValue(Part),
        Dpi = scan.Of(parse),
    };

    /// <summary>How readings are read.</summary>
    public ListReading Lists(ParseResult parse) => lists.Asked(parse);

    /// <summary>Measured points.</summary>
    public Option<string?> Measured { get; } = new("--measured")
    {
        Description = "Points measured round a cut panel (CSV u,v in mm): laid on the outline and judged.",
        HelpName = "file",
    };

    /// <summary>Tolerance.</summary>
    public Option<double?> Profile { get; } = new("--profile")
    {
        Description = "With --measured: profile tolerance of the panel, the width of the zone (default: the die's own, or 1.2 mm for an "
            + "outline).",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
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

    /// <summary>A newer die.</summary>
    public Option<string?> Newer { get; } = new("--newer")
    {
        Description = "With --readings: a newer die.json; the older one is marked superseded where revision or edge differ.",
        HelpName = "file",
    };
}
