namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>What the master pays for the work of the dies on one kind of roll.</summary>
/// <param name="Strike">Money for a strike, by the place of the die in <see cref="FeltKind.Dies"/>; its own cost is taken off.</param>
/// <param name="Piece">Money for each piece.</param>
internal sealed record PatternValues(double[] Strike, double[] Piece);
