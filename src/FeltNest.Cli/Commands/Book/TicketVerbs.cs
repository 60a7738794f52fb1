using System.CommandLine;
using FeltNest.Files;
using FeltNest.Files.Csv;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Commands.Book;

/// <summary>Commands for tickets that come back, for corrections, and for what is taken back.</summary>
internal static class TicketVerbs
{
    private const string Sure = "Figures that look like a slip are meant so.";

    /// <summary>The commands.</summary>
    public static IEnumerable<Command> All(Terminal terminal) => [Ticket(terminal), Correct(terminal), Undo(terminal)];

    // Long because a ticket has many blanks, each with its option.
    private static Command Ticket(Terminal terminal)
    {
        BookVerb verb = new(terminal, "ticket", "A ticket that came back: its number, and what was filled in. Any field may stay blank.");
        Argument<long> number = new("NUMBER") { Description = "Number of the ticket.", HelpName = "NUMBER" };
        verb.Command.Add(number);
        Option<int?> strikes = verb.Count("--strikes", "Strikes made.");
        Option<int?> good = verb.Count("--good", "Good panels, with and without a partner.");
        Option<string?> rejects = verb.Text("--rejects", "reason:n,...", "Panels rejected, by reason, as edge:3,hole:2.");
        Option<int?> unpaired = verb.Count("--unpaired", "Of the good panels, those without a partner.");
        Option<int?> faults = verb.Count("--faults", "Panels lost to faults of the felt.");
        Option<int?> seen = verb.Count("--faults-seen", "Faults seen on the piece, for faults a metre.");
        Option<double?> width = verb.Number("--width", ShopRanges.RollWidth.High, "mm", "Width as measured.");
        Option<int?> rows = verb.Count("--rows", "Rows really cut.");
        Option<double?> from = verb.Number("--from", ShopRanges.MostRollM, "m", "Where the felt was cut from, where not as planned.");
        Option<double?> to = verb.Number("--to", ShopRanges.MostRollM, "m", "Where it was cut to.");
        Option<string?> roll = verb.Text("--roll", "roll", "The roll that was really cut, where it is not the ticket's.");
        Option<string?> day = verb.Text("--day", "day", "Day it was cut, as 2026-03-02.");
        Option<string?> shift = verb.Text("--shift", "name", "Shift.");
        Option<string?> hand = verb.Text("--operator", "name", "Operator.");
        Option<string?> note = verb.Text("--note", "text", "What was noted.");
        Option<bool> over = verb.Flag("--over", "Nothing more is cut on it, though strikes are missing.");
        Option<bool> more = verb.Flag("--more", "It came back before: this is what was cut since.");
        Option<bool> sure = verb.Flag("--sure", Sure);
        return verb.Writes((parse, desk) => TicketEntries.FilledIn(desk, new TicketAsk
        {
            Number = parse.GetValue(number),
            Strikes = parse.GetValue(strikes),
            GoodPanels = parse.GetValue(good),
            Rejects = parse.GetValue(rejects) is { } text ? RejectsText.Read(text) : null,
            UnpairedPanels = parse.GetValue(unpaired),
            FaultPanels = parse.GetValue(faults),
            FaultsSeen = parse.GetValue(seen),
            WidthMm = BookVerb.Exact(parse.GetValue(width)),
            Rows = parse.GetValue(rows),
            FromM = BookVerb.Exact(parse.GetValue(from)),
            ToM = BookVerb.Exact(parse.GetValue(to)),
            Roll = parse.GetValue(roll),
            Day = parse.GetValue(day) is { } typed ? DayOf(typed) : null,
            Shift = parse.GetValue(shift),
            Operator = parse.GetValue(hand),
            Note = parse.GetValue(note),
            Over = parse.GetValue(over),
            More = parse.GetValue(more),
            MeantSo = parse.GetValue(sure),
        }));
    }

    private static string DayOf(string text) => DayText.Of(text) is not null
        ? text
        : throw new InputException(null, "--day", $"'{OneLine.Of(text)}' is not a day: write it as 2026-03-31 (year-month-day)");

    private static Command Correct(Terminal terminal)
    {
        BookVerb verb = new(terminal, "correct", "Correct an entry: a new one says what it corrects and why.");
        Argument<long> number = new("ENTRY") { Description = "Number of the entry.", HelpName = "ENTRY" };
        verb.Command.Add(number);
        Option<string[]> set = new("--set")
        {
            Description = "A field as it should be, as strikes=119; may be given again.",
            HelpName = "field=value",
            Required = true,
        };
        Option<string> why = new("--why") { Description = "Why.", HelpName = "text", Required = true };
        verb.Command.Add(set);
        verb.Command.Add(why);
        Option<bool> sure = verb.Flag("--sure", Sure);
        return verb.Writes((parse, desk) => Corrections.Correct(
            desk, parse.GetValue(number), [.. parse.GetValue(set)!.Select(Field)], parse.GetValue(why)!, parse.GetValue(sure)));
    }

    private static KeyValuePair<string, string> Field(string text) => text.IndexOf('=') is > 0 and int at
        ? new(text[..at].Trim(), text[(at + 1)..].Trim())
        : throw new InputException(null, "--set", $"'{OneLine.Of(text)}' is not allowed: a field and its value, as strikes=119");

    private static Command Undo(Terminal terminal)
    {
        BookVerb verb = new(terminal, "undo", "Take the last act back: a new entry says so.");
        Option<string?> why = verb.Text("--why", "text", "Why.");
        Option<bool> sure = verb.Flag("--sure", "Take it back though another hand wrote it.");
        return verb.Writes((parse, desk) => Corrections.Undo(desk, parse.GetValue(why), parse.GetValue(sure)));
    }
}
