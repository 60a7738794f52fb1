using System.CommandLine;
using FeltNest.Cost.Offers;
using FeltNest.Files.Csv;
using FeltNest.Files.Offers;

namespace FeltNest.Cli.Options;

/// <summary>What is laid over: a few widths, a range of them, or the widths of offers; one of the three.</summary>
internal sealed class WidthOptions
{
    private readonly string command;
    private readonly Option<IReadOnlyList<double>?> widths;
    private readonly Option<IReadOnlyList<double>?> range;
    private readonly Option<string?> offers;
    private readonly ListOptions lists;

    /// <param name="command">The command they are added to.</param>
    /// <param name="each">What every width is laid for, behind a space; empty for the one part of the command.</param>
    public WidthOptions(Command command, string each = "")
    {
        this.command = command.Name;
        widths = new Option<IReadOnlyList<double>?>("--widths")
        {
            Description = $"Roll widths, each searched by all ways{each}.",
            HelpName = "A,B,C",
            CustomParser = WidthList.List,
        };
        range = new Option<IReadOnlyList<double>?>("--width-range")
        {
            Description = $"Many roll widths, laid in parallel rows from one set of tables{each}.",
            HelpName = "FROM:TO:STEP",
            CustomParser = WidthList.Range,
        };
        offers = new Option<string?>("--offers")
        {
            Description = $"Offers of felt (CSV), each searched by all ways on its guaranteed width{each}.",
            HelpName = "FILE",
        };
        foreach (Option option in (Option[])[widths, range, offers])
        {
            command.Add(option);
        }

        lists = new ListOptions(command);
    }

    /// <summary>Refuses none of them, and more than one.</summary>
    /// <exception cref="InputException">Says what is wanted.</exception>
    public void RequireOne(ParseResult parse)
    {
        int given = ((Option[])[widths, range, offers]).Count(option => parse.GetResult(option) is not null);
        if (given != 1)
        {
            throw new InputException(null, command, given == 0
                ? "needs widths to choose from: --widths 1370,1500, --width-range 1300:1600:5 or --offers FILE"
                : "takes one of --widths, --width-range and --offers at a time");
        }
    }

    /// <summary>Roll widths, mm; none where offers are given.</summary>
    public IReadOnlyList<double> WidthsMm(ParseResult parse) => parse.GetValue(range) ?? parse.GetValue(widths) ?? [];

    /// <summary>True where a range is laid in parallel rows.</summary>
    public bool Scanned(ParseResult parse) => parse.GetValue(range) is not null;

    /// <summary>File of the offers, or null.</summary>
    public string? OffersFile(ParseResult parse) => parse.GetValue(offers);

    /// <summary>The offers, or null.</summary>
    /// <exception cref="InputException">A list that cannot be used.</exception>
    public IReadOnlyList<FeltOffer>? Offers(ParseResult parse, ListReading reading) =>
        parse.GetValue(offers) is { } file ? OffersReader.Read(reading.Open(file)) : null;

    /// <summary>How lists are read.</summary>
    public ListReading Lists(ParseResult parse) => lists.Asked(parse);

    /// <summary>The word for them in the name of a folder.</summary>
    public string Word(ParseResult parse) => parse.GetValue(offers) is { } file
        ? DefaultFolder.FileWord(file)
        : DefaultFolder.WidthsWord(WidthsMm(parse), Scanned(parse));
}
