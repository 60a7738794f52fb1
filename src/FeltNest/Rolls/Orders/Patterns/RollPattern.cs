namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>A way to cut a roll: strikes and pieces of each die, whichever orders of the die's ball they serve.</summary>
/// <param name="Kind">The kind of roll.</param>
/// <param name="Strikes">Strikes by the place of the die in <see cref="FeltKind.Dies"/>.</param>
/// <param name="Pieces">Pieces they are cut in, by the same place.</param>
/// <param name="CutM">Felt they take, m.</param>
/// <param name="Cost">Felt of the roll less what goes back to stock, and the work of its strikes.</param>
internal sealed record RollPattern(FeltKind Kind, int[] Strikes, int[] Pieces, double CutM, double Cost);
