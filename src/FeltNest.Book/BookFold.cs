namespace FeltNest.Book;

/// <summary>The one place where present figures follow from entries.</summary>
internal static class BookFold
{
    /// <summary>What is known of something after one more entry that stands.</summary>
    /// <param name="subject">The thing.</param>
    /// <param name="state">What was known before; null for nothing.</param>
    /// <param name="entry">The entry.</param>
    public static object? After(Subject subject, object? state, BookEntry entry) => subject.Kind switch
    {
        SubjectKind.Roll => RollFold.After((RollState?)state, subject.Name, entry),
        SubjectKind.Die => DieFold.After((DieState?)state, subject.Name, entry),
        SubjectKind.Order => OrderFold.After((OrderState?)state, subject.Name, entry),
        SubjectKind.Ticket => TicketFold.After((TicketState?)state, subject.Name, entry),
        SubjectKind.Plan => PlanFold.After((PlanState?)state, entry),
        SubjectKind.Standard => StandardFold.After((StandardState?)state, entry),
        SubjectKind.List => OfList(entry),
        _ => null,
    };

    /// <summary>What is known of something from all its entries.</summary>
    public static object? Of(Subject subject, IEnumerable<BookEntry> entries) =>
        StandingEntries.Of(entries).Aggregate((object?)null, (state, entry) => After(subject, state, entry));

    /// <summary>Whether work is still to come of it.</summary>
    public static bool IsOpen(object state) => state switch
    {
        RollState roll => roll.LeftM > 0,
        OrderState order => !order.Closed && order.Left > 0,
        TicketState ticket => !ticket.Withdrawn && ticket.Phase != TicketPhase.Cut,
        PlanState plan => plan.Taken,
        _ => true,
    };

    /// <summary>A state as it is kept.</summary>
    public static string Text(object state) => state switch
    {
        RollState roll => BookJson.Write(roll),
        DieState die => BookJson.Write(die),
        OrderState order => BookJson.Write(order),
        TicketState ticket => BookJson.Write(ticket),
        PlanState plan => BookJson.Write(plan),
        StandardState standard => BookJson.Write(standard),
        ListState list => BookJson.Write(list),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "is no state of the book"),
    };

    /// <summary>The state of a text.</summary>
    public static object State(SubjectKind kind, string text) => kind switch
    {
        SubjectKind.Roll => BookJson.Read<RollState>(text),
        SubjectKind.Die => BookJson.Read<DieState>(text),
        SubjectKind.Order => BookJson.Read<OrderState>(text),
        SubjectKind.Ticket => BookJson.Read<TicketState>(text),
        SubjectKind.Plan => BookJson.Read<PlanState>(text),
        SubjectKind.Standard => BookJson.Read<StandardState>(text),
        SubjectKind.List => BookJson.Read<ListState>(text),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "has no state"),
    };

    private static ListState? OfList(BookEntry entry) => entry.Kind != EntryKind.ListBroughtIn ? null : new ListState
    {
        List = BookJson.Read<ListBody>(entry.Body),
        Entry = entry.Number,
        At = entry.At,
        By = entry.By,
    };
}
