namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>What the master pays for the work of the dies on one kind of roll.</summary>
internal sealed record PatternValues
{
    /// <summary>Money for a strike, by the place of the die in <see cref="FeltKind.Dies"/>; its own cost is taken off.</summary>
    public required double[] Strike { get; init; }

    /// <summary>Money for each piece.</summary>
    public required double[] Piece { get; init; }
}
