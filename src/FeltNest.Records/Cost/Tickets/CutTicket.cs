namespace FeltNest.Cost.Tickets;

/// <summary>What came back on a ticket, or on a part of it, with the figures it was printed with. What is null stood blank.</summary>
internal sealed record CutTicket
{
    /// <summary>Number of the ticket.</summary>
    public required long Number { get; init; }

    /// <summary>Number of the entry by which it came back.</summary>
    public required long Entry { get; init; }

    /// <summary>Day it was cut, as 2026-03-02; that of the entry where it stood blank.</summary>
    public required string Day { get; init; }

    public required string Ball { get; init; }

    public required string Roll { get; init; }

    public required string Lot { get; init; }

    public string? Supplier { get; init; }

    public required string Press { get; init; }

    public string? Operator { get; init; }

    public string? Shift { get; init; }

    /// <summary>Panels one strike cuts.</summary>
    public required int StrikePanels { get; init; }

    /// <summary>Advance of a strike, mm.</summary>
    public required decimal FeedMm { get; init; }

    /// <summary>What this run takes beyond its feeds, m; 0 where it goes on from an earlier one.</summary>
    public required decimal OverM { get; init; }

    /// <summary>Felt before the piece that was lost with it, m.</summary>
    public required decimal LeadM { get; init; }

    /// <summary>Felt cut, m.</summary>
    public required decimal CutM { get; init; }

    /// <summary>Whether the felt was told by its places on the roll; else it is that of the strikes.</summary>
    public required bool HasPlaces { get; init; }

    /// <summary>Width of the roll as it was planned, mm.</summary>
    public required decimal PlannedWidthMm { get; init; }

    /// <summary>Narrowest width that loses no row, mm; null where the ticket does not say it.</summary>
    public decimal? LeastWidthMm { get; init; }

    /// <summary>Rows of the layout; null where the ticket does not say it.</summary>
    public int? LayoutRows { get; init; }

    /// <summary>Width as invoiced, mm.</summary>
    public required decimal InvoicedWidthMm { get; init; }

    /// <summary>Length invoiced for each metre that is there.</summary>
    public required decimal InvoicedShare { get; init; }

    /// <summary>Length of the roll, m.</summary>
    public required decimal RollLengthM { get; init; }

    /// <summary>Price of an invoiced metre.</summary>
    public required decimal PricePerMetre { get; init; }

    public required string Currency { get; init; }

    /// <summary>Shares that the ticket was printed with, %: faults, rejects, panels without a partner.</summary>
    public required decimal FaultPercent { get; init; }

    public required decimal RejectPercent { get; init; }

    public required decimal UnpairedPercent { get; init; }

    public int? Strikes { get; init; }

    public int? GoodPanels { get; init; }

    public IReadOnlyDictionary<string, int>? Rejects { get; init; }

    public int? UnpairedPanels { get; init; }

    public int? FaultPanels { get; init; }

    /// <summary>Faults seen on the piece.</summary>
    public int? FaultsSeen { get; init; }

    public decimal? WidthMm { get; init; }

    public int? Rows { get; init; }

    /// <summary>Felt drawn from the roll, m.</summary>
    public decimal DrawnM => CutM + LeadM;

    /// <summary>Panels rejected, or null.</summary>
    public int? RejectedPanels => Rejects?.Values.Sum();
}
