namespace FeltNest.Cost.Tickets;

/// <summary>What tickets are put together by.</summary>
internal enum TicketGrouping
{
    /// <summary>All together; the charts go day by day.</summary>
    Cause,

    Roll,

    Lot,

    Supplier,

    Press,

    Operator,

    Shift,

    /// <summary>Weeks from Monday on (ISO 8601).</summary>
    Week,
}
