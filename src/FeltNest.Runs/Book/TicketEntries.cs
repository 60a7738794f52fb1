using System.Globalization;
using FeltNest.Book;
using FeltNest.Files;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>Tickets that come back.</summary>
internal static class TicketEntries
{
    /// <summary>Writes what came back on a ticket.</summary>
    /// <exception cref="InputException">No such ticket, one that came back already, or figures that can hardly be.</exception>
    public static BookSaid FilledIn(BookDesk desk, TicketAsk asked) => desk.Write(book =>
    {
        string number = asked.Number.ToString(CultureInfo.InvariantCulture);
        TicketState state = BookDesk.Known<TicketState>(book, SubjectKind.Ticket, number);
        if (state.Filled > 0 && !asked.More)
        {
            throw new InputException(
                AskedFor.MoreOfTicket,
                $"ticket {number} came back already, with {state.Strikes} strikes: give this to add what was cut since; what was wrong is "
                    + "corrected by the number of its entry");
        }

        FillBody fill = TicketFill.Of(state.Ticket, BodyOf(book, state.Ticket, asked), state.Strikes, state.Filled == 0);
        Require(fill);
        if (!asked.MeantSo)
        {
            AskAbout(number, fill.Roll, [.. TicketSlips.Of(state.Ticket, state.Strikes, fill)]);
        }

        long entry = book.Add(BookDraft.Of(EntryKind.TicketFilledIn, SubjectKind.Ticket, number, fill));
        return Said(book, number, entry, fill) with { Notes = [.. Notes(book, state, fill)] };
    });

    /// <summary>Refuses what no ticket can say.</summary>
    internal static void Require(FillBody fill)
    {
        int?[] counts = [fill.Strikes, fill.GoodPanels, fill.UnpairedPanels, fill.FaultPanels, fill.FaultsSeen, fill.Rows, .. Counts(fill)];
        if (Array.Exists(counts, count => count is < 0 or > ShopRanges.MostCount))
        {
            throw new InputException($"a count is outside 0 to {ShopRanges.MostCount}");
        }

        if (fill is { FromM: { } from, ToM: { } to } && !(from >= 0 && to > from))
        {
            throw new InputException(Invariant($"felt from {from:0.###} to {to:0.###} m is none: it runs from a place on"));
        }

        if ((fill.FromM is null) != (fill.ToM is null))
        {
            throw new InputException("one end of the piece is missing: give both places, or neither");
        }
    }

    /// <summary>Asks about what can hardly be.</summary>
    internal static void AskAbout(string number, string roll, string[] slips)
    {
        if (slips.Length > 0)
        {
            throw new InputException(
                AskedFor.Insisted, $"ticket {number}, roll {roll}: {string.Join("; ", slips)}: give this where it is so");
        }
    }

    private static IEnumerable<int?> Counts(FillBody fill) => (fill.Rejects?.Values ?? []).Select(count => (int?)count);

    private static FillBody BodyOf(BookWriter book, TicketBody ticket, TicketAsk asked)
    {
        string roll = RollOf(book, ticket, asked);
        DieState die = BookDesk.Known<DieState>(book, SubjectKind.Die, ticket.Die);
        if (die.Die.MakePrice is not null)
        {
            throw new InputException($"die '{ticket.Die}' is still to be made in the book: say first that it is there");
        }

        return new FillBody
        {
            Order = ticket.Order,
            Roll = roll,
            Die = ticket.Die,
            Press = ticket.Press,
            Strikes = asked.Strikes,
            GoodPanels = asked.GoodPanels,
            Rejects = asked.Rejects,
            UnpairedPanels = asked.UnpairedPanels,
            FaultPanels = asked.FaultPanels,
            FaultsSeen = asked.FaultsSeen,
            WidthMm = asked.WidthMm,
            Rows = asked.Rows,
            FromM = asked.FromM,
            ToM = asked.ToM,
            CutM = 0,
            LeadM = 0,
            Balls = 0,
            Over = asked.Over,
            Day = asked.Day,
            Shift = asked.Shift,
            Operator = asked.Operator,
            Note = asked.Note,
        };
    }

    private static string RollOf(BookWriter book, TicketBody ticket, TicketAsk asked)
    {
        string roll = asked.Roll ?? ticket.Roll;
        if (book.State<RollState>(SubjectKind.Roll, roll) is not null)
        {
            return roll;
        }

        throw new InputException(
            AskedFor.CutRoll,
            asked.Roll is null
                ? $"roll '{OneLine.Of(roll)}' of the ticket is not in the book: receive the roll that came, and name it by this"
                : $"'{OneLine.Of(roll)}' is not in the book");
    }

    private static BookSaid Said(BookWriter book, string number, long entry, FillBody fill)
    {
        RollState roll = book.State<RollState>(SubjectKind.Roll, fill.Roll)!;
        OrderState? order = book.State<OrderState>(SubjectKind.Order, fill.Order);
        TicketState ticket = book.State<TicketState>(SubjectKind.Ticket, number)!;
        string rest = ticket.Phase == TicketPhase.Cut ? "cut" : Invariant($"{ticket.Strikes} of {ticket.Ticket.Strikes} strikes");
        string balls = order is null ? string.Empty : Invariant($"; order {fill.Order}: {order.Done} of {order.Order.Balls} balls");
        return BookSaid.Of(
            Invariant($"entry {entry}: ticket {number} {rest}; roll {fill.Roll}: {roll.LeftM:0.###} m left{balls}"));
    }

    private static IEnumerable<string> Notes(BookWriter book, TicketState before, FillBody fill)
    {
        string[] blank = [.. Blank(fill)];
        if (blank.Length > 0)
        {
            yield return $"blank, and not counted: {string.Join(", ", blank)}";
        }

        if (fill is { GoodPanels: null, Strikes: not null })
        {
            yield return $"good panels are blank: the order counts {fill.Balls} balls, as planned for these strikes";
        }

        if (before.Withdrawn)
        {
            yield return "a later plan took the place of this ticket: what it cut counts all the same, so plan again";
        }

        DieState die = book.State<DieState>(SubjectKind.Die, fill.Die)!;
        if (die.Left < 0)
        {
            yield return $"die {fill.Die} has struck {-die.Left} times more than its rules had left: say whether it was ruled again";
        }
    }

    private static IEnumerable<string> Blank(FillBody fill)
    {
        (string Name, object? Value)[] fields =
        [
            ("strikes, felt", fill.Strikes ?? (object?)fill.ToM), ("good panels", fill.GoodPanels), ("rejects", fill.Rejects),
            ("unpaired panels", fill.UnpairedPanels), ("width", fill.WidthMm), ("day", fill.Day), ("shift", fill.Shift),
            ("operator", fill.Operator),
        ];
        return fields.Where(field => field.Value is null).Select(field => field.Name);
    }
}
