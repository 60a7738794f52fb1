namespace FeltNest.Rolls.Orders.Planned;

/// <summary>What a plan does for one order.</summary>
internal sealed record OrderResult
{
    /// <summary>The order.</summary>
    public required CoverOrder Order { get; init; }

    /// <summary>Good balls to expect.</summary>
    public required int GoodBalls { get; init; }

    /// <summary>Day on which its last cover is cut, or null where nothing is cut.</summary>
    public required DateOnly? Done { get; init; }

    /// <summary>Days that is after its due day; 0 in time.</summary>
    public required int DaysLate { get; init; }

    /// <summary>Orders of higher priority without which it would be done on an earlier day.</summary>
    public IReadOnlyList<RushDelay> PushedBy { get; init; } = [];

    /// <summary>Days late times the priority of the order.</summary>
    public long WeightedDaysLate => (long)DaysLate * Order.Priority;

    /// <summary>Balls that the felt kept back for it would give.</summary>
    public required int ReservedBalls { get; init; }

    /// <summary>Why it is short, and what would help; null where it is not, and while the search is on.</summary>
    public string? Reason { get; init; }

    /// <summary>Balls short.</summary>
    public int ShortBalls => Math.Max(0, Order.Balls - GoodBalls);

    /// <summary>Balls of its reserve short.</summary>
    public int ReserveShortBalls => Math.Max(0, Order.ReserveBalls - ReservedBalls);
}
