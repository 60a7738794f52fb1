using FeltNest.Cost.Charts;

namespace FeltNest.Cost.Tickets;

/// <summary>The tickets of a period against their standard.</summary>
internal sealed record PeriodUsage
{
    /// <summary>Name of the book.</summary>
    public required string Book { get; init; }

    /// <summary>First day, as 2026-03-02.</summary>
    public required string Since { get; init; }

    /// <summary>Last day, or null.</summary>
    public required string? Until { get; init; }

    /// <summary>What the groups have in common.</summary>
    public required TicketGrouping By { get; init; }

    /// <summary>All tickets.</summary>
    public required TicketGroup Whole { get; init; }

    /// <summary>The groups, in the order of their first ticket.</summary>
    public required IReadOnlyList<TicketGroup> Groups { get; init; }

    /// <summary>Currency of the money.</summary>
    public required string Currency { get; init; }

    /// <summary>Versions of the standards that were used.</summary>
    public required IReadOnlyList<TicketStandard> Standards { get; init; }

    /// <summary>Control charts.</summary>
    public required IReadOnlyList<ControlChart> Charts { get; init; }

    /// <summary>Numbers of tickets left out, as they tell neither strikes nor felt, or gave no ball.</summary>
    public required IReadOnlyList<long> LeftOut { get; init; }
}
