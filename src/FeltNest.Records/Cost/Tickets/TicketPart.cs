namespace FeltNest.Cost.Tickets;

/// <summary>One cause's part of a difference; above 0 is more than standard.</summary>
/// <param name="Cause">Why.</param>
/// <param name="M2">Felt, m2; 0 for the price.</param>
/// <param name="Money">The same at the standard price; for the price what it makes on the felt really paid.</param>
internal sealed record TicketPart(TicketCause Cause, decimal M2, decimal Money);
