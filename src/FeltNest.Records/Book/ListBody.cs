namespace FeltNest.Book;

/// <summary>A list that was brought in.</summary>
internal sealed record ListBody
{
    /// <summary>What it lists: rolls, dies, orders.</summary>
    public required string What { get; init; }

    public required int Lines { get; init; }
}
