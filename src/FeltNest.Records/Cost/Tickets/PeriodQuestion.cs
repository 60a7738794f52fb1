namespace FeltNest.Cost.Tickets;

/// <summary>Which tickets are asked about, and what they are put together by.</summary>
internal sealed record PeriodQuestion
{
    /// <summary>Name of the book.</summary>
    public required string Book { get; init; }

    /// <summary>First day, as 2026-03-02.</summary>
    public required string Since { get; init; }

    /// <summary>Last day, or null.</summary>
    public required string? Until { get; init; }

    /// <summary>What the groups have in common.</summary>
    public required TicketGrouping By { get; init; }

    /// <summary>What came back in these days.</summary>
    public required IReadOnlyList<CutTicket> Tickets { get; init; }

    /// <summary>Standards of all balls, all versions.</summary>
    public required IReadOnlyList<TicketStandard> Standards { get; init; }
}
