using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Book;
using FeltNest.Files;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>Corrects entries, and takes acts back: by entries that say so.</summary>
internal static class Corrections
{
    // What an entry works out by itself; the balls of an order are typed.
    private static string[] WorkedOut(EntryKind kind) =>
        kind == EntryKind.TicketFilledIn ? ["cutM", "leadM", "balls"] : ["wasM", "wasLeft"];

    /// <summary>Corrects an entry.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="number">Its number.</param>
    /// <param name="set">Fields of its body and their values as they should be; blank for none.</param>
    /// <param name="why">Why.</param>
    /// <param name="meantSo">Whether figures that look like a slip are meant so.</param>
    /// <exception cref="InputException">No such entry, one that was taken back, or values that cannot be.</exception>
    public static BookSaid Correct(
        BookDesk desk, long number, IReadOnlyList<KeyValuePair<string, string>> set, string why, bool meantSo) => desk.Write(book =>
    {
        BookEntry root = RootOf(book, number);
        BookEntry standing = StandingEntries.Of(book.Tables.OfSubject(root.Subject)).FirstOrDefault(e => e.Number == root.Number)
            ?? throw new InputException(Invariant($"entry {number} was taken back: there is nothing to correct"));
        string body = Fields(standing, set);
        if (root.Kind == EntryKind.TicketFilledIn)
        {
            body = Filled(book, root, standing, body, meantSo);
        }

        long entry = book.Add(new BookDraft { Kind = root.Kind, Subject = root.Subject, Body = body, Corrects = root.Number, Why = why });
        return BookSaid.Of(Invariant(
            $"entry {entry} corrects entry {root.Number} ({EnumWord.Of(root.Kind).Replace('-', ' ')}, {root.Subject.Name}): {why}"));
    });

    /// <summary>Takes the last act back.</summary>
    /// <exception cref="InputException">There is none, or another hand wrote it.</exception>
    public static BookSaid Undo(BookDesk desk, string? why, bool meantSo) => desk.Write(book =>
    {
        long act = book.Tables.LastStandingAct() ?? throw new InputException("there is nothing to take back");
        IReadOnlyList<BookEntry> entries = book.Tables.OfAct(act);
        BookEntry first = entries[0];
        if (first.By != desk.Hand.By && !meantSo)
        {
            throw new InputException(
                AskedFor.Insisted, $"the last act, entry {act} ({Words(first)}), is by {first.By}: give this to take it back all the same");
        }

        long entry = book.TakeBack(act, why);
        string more = entries.Count > 1 ? Invariant($" and {entries.Count - 1} entries with it") : string.Empty;
        return BookSaid.Of(Invariant($"entry {entry} takes back entry {act} ({Words(first)}){more}"));
    });

    private static string Words(BookEntry entry) =>
        $"{EnumWord.Of(entry.Kind).Replace('-', ' ')}{(entry.Kind == EntryKind.ListBroughtIn ? string.Empty : $", {entry.Subject.Name}")}";

    // The entry itself, where the number is of a correction.
    private static BookEntry RootOf(BookWriter book, long number)
    {
        BookEntry entry = book.Tables.Entry(number) ?? throw new InputException(Invariant($"there is no entry {number}"));
        BookEntry root = entry.IsCorrection ? book.Tables.Entry(entry.Corrects!.Value)! : entry;
        return root.Kind is EntryKind.Undone or EntryKind.ListBroughtIn or EntryKind.PlanMade or EntryKind.PlanTaken
                or EntryKind.TicketPrinted or EntryKind.OrderClosed or EntryKind.StandardSet
            ? throw new InputException(
                Invariant($"entry {number} ({EnumWord.Of(root.Kind).Replace('-', ' ')}) is not corrected: take it back"))
            : root;
    }

    private static string Fields(BookEntry standing, IReadOnlyList<KeyValuePair<string, string>> set)
    {
        JsonObject body = JsonNode.Parse(standing.Body)!.AsObject();
        foreach ((string name, string value) in set)
        {
            if (Array.IndexOf(WorkedOut(standing.Kind), name) >= 0)
            {
                throw new InputException(AskedFor.SetValues, $"{name} follows from the other fields");
            }

            CorrectedValue.Require(standing.Kind, name, value);
            body[name] = NodeOf(name, value);
        }

        try
        {
            return Typed(standing.Kind, body.ToJsonString());
        }
        catch (JsonException error)
        {
            throw new InputException(
                AskedFor.SetValues,
                $"{string.Join(", ", set.Select(s => OneLine.Of($"{s.Key}={s.Value}")))} does not fit this entry: it has "
                    + $"{string.Join(", ", FieldsOf(standing.Kind).Except(WorkedOut(standing.Kind)))}",
                error);
        }
    }

    // Numbers and yes or no as they are, rejects as reason:count, all else as text; what it must be is said by the body's own type.
    private static JsonNode? NodeOf(string name, string value) => (name, value) switch
    {
        (_, "") => null,
        ("rejects", _) => JsonNode.Parse(BookJson.Write(RejectsText.Read(value))),
        ("operator" or "shift" or "note" or "day" or "supplier" or "lot" or "felt" or "roll" or "order" or "die" or "press", _) =>
            JsonValue.Create(value),
        (_, "yes") => JsonValue.Create(true),
        (_, "no") => JsonValue.Create(false),
        _ => decimal.TryParse(
            value, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out decimal number)
            ? Amount(name, number)
            : JsonValue.Create(value),
    };

    private static JsonValue Amount(string name, decimal number) => number >= 0
        ? JsonValue.Create(number)
        : throw new InputException(AskedFor.SetValues, Invariant($"{name}={number} is below 0"));

    private static string Typed(EntryKind kind, string body) => kind switch
    {
        EntryKind.RollReceived => Again<RollBody>(body),
        EntryKind.RollMeasured or EntryKind.RollPutBack => Again<MeasuredBody>(body),
        EntryKind.RollCut => Again<CutBody>(body),
        EntryKind.RollScrapped => Again<ScrappedBody>(body),
        EntryKind.DieMade => Again<DieBody>(body),
        EntryKind.DieReady or EntryKind.DieStruck or EntryKind.DieRuledAgain => Again<StrikesBody>(body),
        EntryKind.DieMounted => Again<MountedBody>(body),
        EntryKind.OrderTaken or EntryKind.OrderChanged => Again<OrderBody>(body),
        _ => Again<FillBody>(body),
    };

    private static string Again<T>(string body) => BookJson.Write(BookJson.Read<T>(body));

    private static IEnumerable<string> FieldsOf(EntryKind kind)
    {
        Type type = kind switch
        {
            EntryKind.RollReceived => typeof(RollBody),
            EntryKind.RollMeasured or EntryKind.RollPutBack => typeof(MeasuredBody),
            EntryKind.RollCut => typeof(CutBody),
            EntryKind.RollScrapped => typeof(ScrappedBody),
            EntryKind.DieMade => typeof(DieBody),
            EntryKind.DieReady or EntryKind.DieStruck or EntryKind.DieRuledAgain => typeof(StrikesBody),
            EntryKind.DieMounted => typeof(MountedBody),
            EntryKind.OrderTaken or EntryKind.OrderChanged => typeof(OrderBody),
            _ => typeof(FillBody),
        };
        return type.GetProperties().Select(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name));
    }

    // Felt and balls follow from what is corrected.
    private static string Filled(BookWriter book, BookEntry root, BookEntry standing, string body, bool meantSo)
    {
        TicketState ticket = book.State<TicketState>(SubjectKind.Ticket, root.Subject.Name)!;
        FillBody old = BookJson.Read<FillBody>(standing.Body);
        FillBody now = BookJson.Read<FillBody>(body);
        int before = ticket.Strikes - (old.Strikes ?? 0);
        now = TicketFill.Of(ticket.Ticket, now, before, ticket.Filled == 1 || old.LeadM > 0);
        TicketEntries.Require(now);
        BookDesk.Known<RollState>(book, SubjectKind.Roll, now.Roll);
        BookDesk.Known<DieState>(book, SubjectKind.Die, now.Die);
        BookDesk.Known<OrderState>(book, SubjectKind.Order, now.Order);
        if (!meantSo)
        {
            TicketEntries.AskAbout(root.Subject.Name, now.Roll, [.. TicketSlips.Of(ticket.Ticket, before, now)]);
        }

        return BookJson.Write(now);
    }
}
