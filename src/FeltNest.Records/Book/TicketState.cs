namespace FeltNest.Book;

/// <summary>A ticket now.</summary>
internal sealed record TicketState
{
    public required TicketBody Ticket { get; init; }

    public required TicketPhase Phase { get; init; }

    public int Strikes { get; init; }

    public int GoodPanels { get; init; }

    public int Balls { get; init; }

    /// <summary>Times it was filled in.</summary>
    public int Filled { get; init; }

    /// <summary>True where a later plan took its place.</summary>
    public bool Withdrawn { get; init; }
}
