namespace FeltNest.Book;

/// <summary>Felt thrown away.</summary>
internal sealed record ScrappedBody
{
    public required decimal LengthM { get; init; }
}
