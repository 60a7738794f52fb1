namespace FeltNest.Book;

/// <summary>A plan of orders.</summary>
internal sealed record PlanBody
{
    /// <summary>First day of cutting.</summary>
    public required string Start { get; init; }

    public required int Orders { get; init; }

    public required int Tickets { get; init; }

    public required int Balls { get; init; }

    public required long ShortBalls { get; init; }

    /// <summary>Last entry of the book that it was made from.</summary>
    public required long MadeFrom { get; init; }

    /// <summary>Numbers of the tickets before that no press has begun and that it replaces.</summary>
    public required IReadOnlyList<long> Withdraws { get; init; }
}
