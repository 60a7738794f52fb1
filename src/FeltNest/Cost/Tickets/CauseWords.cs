namespace FeltNest.Cost.Tickets;

/// <summary>Causes in words, for tables and pictures.</summary>
internal static class CauseWords
{
    /// <summary>A cause in words.</summary>
    public static string Of(TicketCause cause) => cause switch
    {
        TicketCause.Invoiced => "invoiced, not there",
        TicketCause.Width => "width",
        TicketCause.Layout => "another layout or die",
        TicketCause.Feed => "feed and skipped strikes",
        TicketCause.RollEnds => "roll ends",
        TicketCause.Faults => "faults",
        TicketCause.Rejects => "rejects after cutting",
        TicketCause.Unpaired => "panels without a partner",
        TicketCause.Price => "price",
        _ => "told by nobody",
    };
}
