namespace FeltNest.Book;

/// <summary>What a tape, or the eye at the rack, found on a roll.</summary>
internal sealed record MeasuredBody
{
    /// <summary>What the book had before, m.</summary>
    public required decimal WasM { get; init; }

    /// <summary>What is left, m; null where that was not measured.</summary>
    public decimal? LeftM { get; init; }

    public decimal? WidthMm { get; init; }

    public string? MeasuredFile { get; init; }

    /// <summary>Felt found, m; below 0 for felt that is missing.</summary>
    internal decimal FoundM => LeftM is { } left ? left - WasM : 0;
}
