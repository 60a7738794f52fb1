using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The piece of work a ticket is of, where it belongs to a plan of orders.</summary>
internal sealed record TicketOrder
{
    /// <summary>The piece of work; its number is the ticket's.</summary>
    public required OrderCut Cut { get; init; }

    /// <summary>Day on which it is planned to begin.</summary>
    public required DateOnly Start { get; init; }
}
