namespace FeltNest.Cost.Tickets;

/// <summary>One cause's part of a difference; above 0 is more than standard.</summary>
internal sealed record TicketPart
{
    /// <summary>Why.</summary>
    public required TicketCause Cause { get; init; }

    /// <summary>Felt, m2; 0 for the price.</summary>
    public required decimal M2 { get; init; }

    /// <summary>The same at the standard price; for the price what it makes on the felt really paid.</summary>
    public required decimal Money { get; init; }
}
