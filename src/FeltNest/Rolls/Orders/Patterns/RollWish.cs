namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>An order that may be cut by a die on the rolls of a table.</summary>
internal sealed record RollWish
{
    /// <summary>Place of the order in the question.</summary>
    public required int Order { get; init; }

    /// <summary>Place of the die in the question.</summary>
    public required int Die { get; init; }

    /// <summary>Advance of a strike, m.</summary>
    public required double FeedM { get; init; }

    /// <summary>What a piece takes beyond its feeds, m.</summary>
    public required double OverM { get; init; }

    /// <summary>Fewest strikes of a piece.</summary>
    public required int Least { get; init; }

    /// <summary>Most strikes it still wants.</summary>
    public required int Most { get; init; }

    /// <summary>What a strike is worth.</summary>
    public required double StrikeValue { get; init; }

    /// <summary>What it is worth that nothing of the order is left for another piece.</summary>
    public required double WholeValue { get; init; }
}
