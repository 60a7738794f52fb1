namespace FeltNest.Runs.Book;

/// <summary>A ticket as it came back. What is null stood blank.</summary>
internal sealed record TicketAsk
{
    /// <summary>Its number.</summary>
    public required long Number { get; init; }

    public int? Strikes { get; init; }

    public int? GoodPanels { get; init; }

    public IReadOnlyDictionary<string, int>? Rejects { get; init; }

    public int? UnpairedPanels { get; init; }

    public int? FaultPanels { get; init; }

    /// <summary>Faults seen on the piece.</summary>
    public int? FaultsSeen { get; init; }

    public decimal? WidthMm { get; init; }

    public int? Rows { get; init; }

    public decimal? FromM { get; init; }

    public decimal? ToM { get; init; }

    /// <summary>The roll that was really cut, where it is not the ticket's.</summary>
    public string? Roll { get; init; }

    public string? Day { get; init; }

    public string? Shift { get; init; }

    public string? Operator { get; init; }

    public string? Note { get; init; }

    /// <summary>Nothing more is cut on it, though strikes are missing.</summary>
    public bool Over { get; init; }

    /// <summary>It comes back once more: this is what was cut since.</summary>
    public bool More { get; init; }

    /// <summary>Figures that look like a slip are meant so.</summary>
    public bool MeantSo { get; init; }
}
