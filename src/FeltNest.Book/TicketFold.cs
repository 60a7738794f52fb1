namespace FeltNest.Book;

/// <summary>What is known of a ticket.</summary>
internal static class TicketFold
{
    /// <summary>After one more entry.</summary>
    public static TicketState? After(TicketState? ticket, string name, BookEntry entry)
    {
        if (entry.Kind == EntryKind.TicketPrinted)
        {
            return new TicketState { Ticket = BookJson.Read<TicketBody>(entry.Body), Phase = TicketPhase.Open };
        }

        return (ticket, entry.Kind) switch
        {
            (null, _) => null,
            ({ } known, EntryKind.TicketFilledIn) when entry.Subject.Name == name => Filled(known, BookJson.Read<FillBody>(entry.Body)),
            ({ } known, EntryKind.PlanTaken) => known with { Withdrawn = true },
            _ => ticket,
        };
    }

    private static TicketState Filled(TicketState ticket, FillBody body)
    {
        int strikes = ticket.Strikes + (body.Strikes ?? 0);
        TicketPhase some = strikes > 0 ? TicketPhase.Begun : ticket.Phase;
        return ticket with
        {
            Strikes = strikes,
            GoodPanels = ticket.GoodPanels + (body.GoodPanels ?? 0),
            Balls = ticket.Balls + body.Balls,
            Filled = ticket.Filled + 1,
            Phase = body.Over || strikes >= ticket.Ticket.Strikes ? TicketPhase.Cut : some,
        };
    }
}
