namespace FeltNest.Book;

/// <summary>A roll now. Received = cut + left + scrapped.</summary>
internal sealed record RollState
{
    public required RollBody Roll { get; init; }

    /// <summary>As received, and as measured since, m.</summary>
    public required decimal ReceivedM { get; init; }

    public decimal CutM { get; init; }

    public decimal ScrappedM { get; init; }

    public required decimal LeftM { get; init; }

    /// <summary>Strikes made on it.</summary>
    public long Strikes { get; init; }
}
