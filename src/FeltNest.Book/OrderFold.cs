namespace FeltNest.Book;

/// <summary>What is known of an order.</summary>
internal static class OrderFold
{
    /// <summary>After one more entry.</summary>
    public static OrderState? After(OrderState? order, string name, BookEntry entry)
    {
        if (entry.Kind == EntryKind.OrderTaken)
        {
            OrderBody body = BookJson.Read<OrderBody>(entry.Body);
            return new OrderState { Order = body, Done = 0, Left = body.Balls };
        }

        return (order, entry.Kind) switch
        {
            (null, _) => null,
            ({ } known, EntryKind.OrderChanged) => Changed(known, BookJson.Read<OrderBody>(entry.Body)),
            ({ } known, EntryKind.OrderClosed) => known with { Closed = true },
            ({ } known, EntryKind.RollCut) => OfCut(known, name, entry),
            ({ } known, EntryKind.TicketFilledIn) => Filled(known, name, BookJson.Read<FillBody>(entry.Body)),
            _ => order,
        };
    }

    private static OrderState Changed(OrderState order, OrderBody body) =>
        order with { Order = body, Left = body.Balls - order.Done, Closed = false };

    private static OrderState OfCut(OrderState order, string name, BookEntry entry)
    {
        CutBody body = BookJson.Read<CutBody>(entry.Body);
        return body.Order == name ? Done(order, body.Balls ?? 0, entry.Subject.Name) : order;
    }

    private static OrderState Filled(OrderState order, string name, FillBody body) =>
        body.Order == name && (body.Strikes is > 0 || body.Balls > 0) ? Done(order, body.Balls, body.Roll) : order;

    private static OrderState Done(OrderState order, int balls, string roll) =>
        order with { Done = order.Done + balls, Left = order.Left - balls, FirstRoll = order.FirstRoll ?? roll };
}
