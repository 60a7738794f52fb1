using FeltNest.Book;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>What happens to an order beside lists and tickets.</summary>
internal static class OrderEntries
{
    /// <summary>Nothing more is cut for an order.</summary>
    /// <exception cref="InputException">No such order, or one that is closed.</exception>
    public static BookSaid Closed(BookDesk desk, string name, string? why) => desk.Write(book =>
    {
        OrderState order = BookDesk.Known<OrderState>(book, SubjectKind.Order, name);
        if (order.Closed)
        {
            throw new InputException($"order '{name}' is closed already");
        }

        book.Add(BookDraft.Of(EntryKind.OrderClosed, SubjectKind.Order, name, new NoBody(), why));
        string still = order.Left > 0 ? Invariant($", {order.Left} balls short") : string.Empty;
        return BookSaid.Of(Invariant($"order {name} closed: {order.Done} of {order.Order.Balls} balls done{still}"));
    });
}
