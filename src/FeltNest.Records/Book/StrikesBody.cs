namespace FeltNest.Book;

/// <summary>Strikes of a die: those of a rule that is new, or those made.</summary>
internal sealed record StrikesBody
{
    public required int Strikes { get; init; }

    /// <summary>Strikes that the rule before had left, where a new one took its place.</summary>
    public long? WasLeft { get; init; }
}
