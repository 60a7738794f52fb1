namespace FeltNest.Book;

/// <summary>Felt cut without a ticket.</summary>
internal sealed record CutBody
{
    public decimal? FromM { get; init; }

    public decimal? ToM { get; init; }

    public required decimal LengthM { get; init; }

    public string? Order { get; init; }

    public int? Balls { get; init; }

    public string? Die { get; init; }

    public int? Strikes { get; init; }
}
