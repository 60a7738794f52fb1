namespace FeltNest.Rolls.Orders.Planned;

/// <summary>How far a plan is the best.</summary>
/// <param name="CostBound">What no plan with as few balls short and orders late can cost less than; null where nothing is known.</param>
/// <param name="LeastShort">What no plan can be short of less, balls; 0 where nothing is known.</param>
/// <param name="LeastLate">What no plan with as few balls short can have fewer late orders than; 0 where nothing is known.</param>
/// <param name="CutShort">Whether the search was stopped by the clock or by hand.</param>
/// <param name="Effort">Counted work allowed.</param>
/// <param name="Searched">Whether a search was made; false where the question is too large for it and the plan is the one of first
/// fit.</param>
public sealed record PlanProof(decimal? CostBound, double LeastShort, double LeastLate, bool CutShort, int Effort, bool Searched)
{
    /// <summary>Nothing is known yet.</summary>
    internal static PlanProof None { get; } = new(null, 0, 0, false, 0, false);
}
