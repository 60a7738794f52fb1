using System.Globalization;
using FeltNest.Book;

namespace FeltNest.Runs.Book;

/// <summary>Numbers of plans and tickets: none is given twice, though a plan was taken back, as its paper may still lie about.</summary>
internal static class PlanNumbers
{
    /// <summary>Numbers of the last plan and of the last ticket ever written; 0 for none.</summary>
    public static (long Plan, long Ticket) Last(BookTables book) => (Of(book, EntryKind.PlanMade), Of(book, EntryKind.TicketPrinted));

    private static long Of(BookTables book, EntryKind kind) =>
        book.LastOfKind(kind) is { } entry ? long.Parse(entry.Subject.Name, CultureInfo.InvariantCulture) : 0;
}
