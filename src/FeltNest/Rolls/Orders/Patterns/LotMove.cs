namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Portions of two lots as they might be, with the weights they are filled by.</summary>
/// <param name="First">A lot.</param>
/// <param name="FirstPortions">Its portions.</param>
/// <param name="Second">Another lot, or the same.</param>
/// <param name="SecondPortions">Its portions.</param>
/// <param name="Seed">Number the weights are drawn by.</param>
internal sealed record LotMove(
    int First, IReadOnlyList<LotPortion> FirstPortions, int Second, IReadOnlyList<LotPortion> SecondPortions, int Seed);
