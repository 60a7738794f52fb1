using System.CommandLine;

namespace FeltNest.Cli.Options;

/// <summary>Options of an outline laid on the ball with a new lot of felt beside the felt before.</summary>
internal sealed class LotOptions
{
    // Widest gap that a glue of an edge may be said to take, mm.
    private const double MostGapMm = 3;

    private readonly Option<string?> lot = new("--lot")
    {
        Description = "With --wrap: lay it with this felt file too (felt.json of a new lot), and tell what changes at the seam.",
        HelpName = "FELT",
    };

    private readonly Option<(double From, double To)?> glue = new("--glue-gap")
    {
        Description = "With --lot: gaps that the glue of the edge takes, mm.",
        HelpName = "from:to",
        CustomParser = NumberRange.Within(-MostGapMm, MostGapMm, "mm", "0.2:0.6"),
    };

    /// <summary>Adds the options to a command.</summary>
    public LotOptions(Command command)
    {
        command.Add(lot);
        command.Add(glue);
    }

    /// <summary>The first of them that was given, or null.</summary>
    public string? FirstGiven(ParseResult parse) =>
        new Option[] { lot, glue }.FirstOrDefault(option => parse.GetResult(option) is { Implicit: false })?.Name;

    /// <summary>The felt file of the new lot and the glue's range; null where no lot is asked for.</summary>
    /// <exception cref="InputException">One of the two is missing.</exception>
    public (string File, (double FromMm, double ToMm) Glue)? Asked(ParseResult parse)
    {
        string? file = parse.GetValue(lot);
        (double From, double To)? range = parse.GetValue(glue);
        if (file is null)
        {
            return range is null ? null : throw new InputException(null, glue.Name, $"belongs to {lot.Name}: give it too");
        }

        return range is { } taken
            ? (file, taken)
            : throw new InputException(null, lot.Name, $"needs {glue.Name}: the gaps that the glue takes, such as 0.2:0.6");
    }
}
