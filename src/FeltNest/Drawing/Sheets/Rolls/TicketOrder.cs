using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The piece of work a ticket is of, where it belongs to a plan of orders.</summary>
internal sealed record TicketOrder
{
    /// <summary>Number of the ticket: all that has to be typed back.</summary>
    public required string Number { get; init; }

    /// <summary>The piece of work.</summary>
    public required OrderCut Cut { get; init; }

    /// <summary>When it is planned to begin, by the clock on the wall.</summary>
    public required DateTime Start { get; init; }
}
