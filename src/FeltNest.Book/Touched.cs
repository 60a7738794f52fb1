namespace FeltNest.Book;

/// <summary>Which things an entry is about: their present figures follow from it.</summary>
internal static class Touched
{
    /// <summary>The things of an entry, its own subject first. What is taken back touches what the act did: the store knows that.</summary>
    public static IReadOnlyList<Subject> Of(BookEntry entry) => [.. All(entry).Distinct()];

    private static IEnumerable<Subject> All(BookEntry entry) => entry.Kind switch
    {
        EntryKind.TicketPrinted => [entry.Subject, .. OfTicket(BookJson.Read<TicketBody>(entry.Body))],
        EntryKind.TicketFilledIn => [entry.Subject, .. OfFill(BookJson.Read<FillBody>(entry.Body))],
        EntryKind.RollCut => [entry.Subject, .. OfCut(BookJson.Read<CutBody>(entry.Body))],
        EntryKind.PlanTaken =>
        [
            entry.Subject,
            .. BookJson.Read<PlanBody>(entry.Body).Withdraws
                .Select(number => new Subject(SubjectKind.Ticket, FormattableString.Invariant($"{number}"))),
        ],
        _ => [entry.Subject],
    };

    // Printed tickets are found by their roll, die and order too, though nothing of these changes.
    private static IEnumerable<Subject> OfTicket(TicketBody ticket) =>
    [
        new(SubjectKind.Roll, ticket.Roll), new(SubjectKind.Die, ticket.Die), new(SubjectKind.Order, ticket.Order),
    ];

    private static IEnumerable<Subject> OfFill(FillBody fill) =>
        [new(SubjectKind.Roll, fill.Roll), new(SubjectKind.Die, fill.Die), new(SubjectKind.Order, fill.Order)];

    private static IEnumerable<Subject> OfCut(CutBody cut)
    {
        if (cut.Order is { } order)
        {
            yield return new Subject(SubjectKind.Order, order);
        }

        if (cut.Die is { } die)
        {
            yield return new Subject(SubjectKind.Die, die);
        }
    }
}
