namespace FeltNest.Book;

/// <summary>A die as it was written down.</summary>
internal sealed record DieBody
{
    public required string Ball { get; init; }

    /// <summary>File of the layout it cuts.</summary>
    public required string Layout { get; init; }

    public required int Repeats { get; init; }

    public int? Band { get; init; }

    public required decimal MostWidthMm { get; init; }

    public required int StrikesLeft { get; init; }

    public decimal? MakePrice { get; init; }

    public required int LifeStrikes { get; init; }

    public required int ReRules { get; init; }

    public required decimal ReRulePrice { get; init; }

    public string? From { get; init; }

    public required int MakeDays { get; init; }
}
