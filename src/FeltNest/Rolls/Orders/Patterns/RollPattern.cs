namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>A way to cut a roll: strikes and pieces of each die, whichever orders of the die's ball they serve.</summary>
internal sealed record RollPattern
{
    /// <summary>The kind of roll.</summary>
    public required FeltKind Kind { get; init; }

    /// <summary>Strikes by the place of the die in <see cref="FeltKind.Dies"/>.</summary>
    public required int[] Strikes { get; init; }

    /// <summary>Pieces they are cut in, by the same place.</summary>
    public required int[] Pieces { get; init; }

    /// <summary>Felt they take, m.</summary>
    public required double CutM { get; init; }

    /// <summary>Felt of the roll less what goes back to stock, and the work of its strikes.</summary>
    public required double Cost { get; init; }
}
