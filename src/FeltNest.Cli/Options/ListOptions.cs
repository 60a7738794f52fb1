using System.CommandLine;
using System.CommandLine.Parsing;
using FeltNest.Files;
using FeltNest.Files.Csv;

namespace FeltNest.Cli.Options;

/// <summary>Options of every command that takes a list: how it writes days, which sheet of a workbook holds it, and whether numbers that
/// are asked about are meant.</summary>
internal sealed class ListOptions
{
    private readonly Option<DayOrder?> dates = new("--dates")
    {
        Description = "Order of days that a list does not write year first: 3/2/2026 is 3 February under dmy, 2 March under mdy.",
        HelpName = string.Join('|', EnumWord.All<DayOrder>()),
        CustomParser = Order,
    };

    private readonly Option<string[]> worksheet = new("--worksheet")
    {
        Description = "Sheet of a workbook (.xlsx) that holds the list (default: the first one shown); LIST=NAME for one of several lists, "
            + "such as stock=Rolls; may be given again.",
        HelpName = "NAME",
    };

    private readonly Option<bool>? sure;

    /// <summary>Adds the options to a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="asks">What numbers it asks about, or null for none.</param>
    public ListOptions(Command command, string? asks = null)
    {
        command.Add(dates);
        command.Add(worksheet);
        if (asks is not null)
        {
            sure = new Option<bool>("--sure") { Description = $"Numbers that are asked about are meant: {asks}." };
            command.Add(sure);
        }
    }

    /// <summary>How the lists are read.</summary>
    public ListReading Asked(ParseResult parse) => new()
    {
        Days = parse.GetValue(dates),
        Sheets = Sheets(parse.GetValue(worksheet) ?? []),
        Insisted = sure is not null && parse.GetValue(sure),
    };

    private Dictionary<string, string> Sheets(string[] given)
    {
        Dictionary<string, string> sheets = [];
        foreach (string one in given)
        {
            string list = Documents.Lists.Select(listing => listing.Name)
                .FirstOrDefault(name => one.StartsWith(name + "=", StringComparison.Ordinal), string.Empty);
            string sheet = list.Length == 0 ? one : one[(list.Length + 1)..];
            if (!sheets.TryAdd(list, sheet))
            {
                throw new InputException(
                    null, worksheet.Name, $"'{OneLine.Of(one)}' stands beside '{sheets[list]}': one sheet a list");
            }
        }

        return sheets;
    }

    private static DayOrder? Order(ArgumentResult result)
    {
        string word = result.Tokens[0].Value;
        if (EnumWord.Find<DayOrder>(word) is { } order)
        {
            return order;
        }

        result.AddError($"--dates: '{word}' is not allowed: {string.Join(", ", EnumWord.All<DayOrder>())}");
        return null;
    }
}
