namespace FeltNest.Cost.Tickets;

/// <summary>Why a ticket used more or less felt than standard.</summary>
internal enum TicketCause
{
    /// <summary>Felt that was invoiced and is not there: listed width and length against those measured.</summary>
    Invoiced,

    /// <summary>Felt wider than the width of the standard, and rows that fell off where it was narrower.</summary>
    Width,

    /// <summary>Another layout or die than that of the standard.</summary>
    Layout,

    /// <summary>Felt cut beyond what the strikes made take: fed too far, strikes skipped.</summary>
    Feed,

    /// <summary>Ends of the roll and what a run takes beyond its feeds, against what its length allows.</summary>
    RollEnds,

    /// <summary>Panels lost to faults of the felt.</summary>
    Faults,

    /// <summary>Panels rejected after cutting.</summary>
    Rejects,

    /// <summary>Good panels without a partner.</summary>
    Unpaired,

    /// <summary>The price against that of the standard: money alone.</summary>
    Price,

    /// <summary>What the counts of the ticket leave unexplained: panels struck of which nobody told.</summary>
    Rest,
}
