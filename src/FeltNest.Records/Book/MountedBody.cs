namespace FeltNest.Book;

/// <summary>Where a die was mounted.</summary>
internal sealed record MountedBody
{
    public required string Press { get; init; }
}
