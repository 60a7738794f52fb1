namespace FeltNest.Rolls.Orders.Planned;

/// <summary>How far a plan is the best.</summary>
internal sealed record PlanProof
{
    /// <summary>What no plan with as few balls short and orders late can cost less than; null where nothing is known.</summary>
    public required decimal? CostBound { get; init; }

    /// <summary>What no plan can be short of less, balls; 0 where nothing is known.</summary>
    public required double LeastShort { get; init; }

    /// <summary>What no plan with as few balls short can have fewer late orders than; 0 where nothing is known.</summary>
    public required double LeastLate { get; init; }

    /// <summary>What no plan with as few balls short can have fewer days late than, each order's times its priority; 0 where nothing is
    /// known.</summary>
    public required double LeastWeightedDays { get; init; }

    /// <summary>Whether the search was stopped by the clock or by hand.</summary>
    public required bool CutShort { get; init; }

    /// <summary>Counted work allowed.</summary>
    public required int Effort { get; init; }

    /// <summary>The least whole number of what is proved: rounding of the solver adds none.</summary>
    public static long Whole(double least) => Math.Max(0, (long)Math.Ceiling(least - 1e-3));

    /// <summary>Nothing is known yet.</summary>
    internal static PlanProof None { get; } = new()
    {
        CostBound = null,
        LeastShort = 0,
        LeastLate = 0,
        LeastWeightedDays = 0,
        CutShort = false,
        Effort = 0,
    };
}
