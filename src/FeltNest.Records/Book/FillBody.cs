namespace FeltNest.Book;

/// <summary>What came back on a ticket. What is null stood blank and is not counted.</summary>
internal sealed record FillBody
{
    public required string Order { get; init; }

    public required string Roll { get; init; }

    public required string Die { get; init; }

    public required string Press { get; init; }

    public int? Strikes { get; init; }

    public int? GoodPanels { get; init; }

    /// <summary>Panels rejected, by reason.</summary>
    public IReadOnlyDictionary<string, int>? Rejects { get; init; }

    public int? UnpairedPanels { get; init; }

    public int? FaultPanels { get; init; }

    /// <summary>Faults seen on the piece.</summary>
    public int? FaultsSeen { get; init; }

    public decimal? WidthMm { get; init; }

    public int? Rows { get; init; }

    public decimal? FromM { get; init; }

    public decimal? ToM { get; init; }

    /// <summary>Felt cut, m.</summary>
    public required decimal CutM { get; init; }

    /// <summary>Felt lost before the piece, m.</summary>
    public required decimal LeadM { get; init; }

    /// <summary>Balls that the order counts: of the panels, or as the plan expects where these are blank.</summary>
    public required int Balls { get; init; }

    /// <summary>True where nothing more is cut on this ticket.</summary>
    public required bool Over { get; init; }

    public string? Day { get; init; }

    public string? Shift { get; init; }

    public string? Operator { get; init; }

    public string? Note { get; init; }
}
