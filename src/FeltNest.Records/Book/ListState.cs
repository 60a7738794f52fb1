namespace FeltNest.Book;

/// <summary>A list that stands in the book.</summary>
internal sealed record ListState
{
    public required ListBody List { get; init; }

    public required long Entry { get; init; }

    public required string At { get; init; }

    public required string By { get; init; }
}
