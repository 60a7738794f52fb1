namespace FeltNest.Rolls.Orders.Model.Mixed;

/// <summary>How far an aim was reached.</summary>
/// <param name="Value">What was reached.</param>
/// <param name="Bound">What no solution can be below.</param>
/// <param name="Proved">Whether the two meet.</param>
internal readonly record struct ModelReach(double Value, double Bound, bool Proved);
