namespace FeltNest.Rolls.Orders.Planned;

/// <summary>How far a plan is the best.</summary>
/// <param name="CostBound">What no plan with as few balls short and orders late can cost less than.</param>
/// <param name="LeastShort">What no plan can be short of less, balls.</param>
/// <param name="LeastLate">What no plan with as few balls short can have fewer late orders than.</param>
/// <param name="CutShort">Whether the search was stopped by the clock or by hand.</param>
/// <param name="Effort">Counted work allowed.</param>
public sealed record PlanProof(decimal CostBound, double LeastShort, double LeastLate, bool CutShort, int Effort);
