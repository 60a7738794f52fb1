namespace FeltNest.Book;

/// <summary>The standards of a ball, the first version first.</summary>
internal sealed record StandardState
{
    public required IReadOnlyList<StandardBody> Versions { get; init; }
}
