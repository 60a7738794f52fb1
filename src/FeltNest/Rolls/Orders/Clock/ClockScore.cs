namespace FeltNest.Rolls.Orders.Clock;

/// <summary>How good a sequence of work is: less is better, the first that differs deciding.</summary>
internal readonly record struct ClockScore : IComparable<ClockScore>
{
    /// <summary>Good balls of pieces for which no press has hours.</summary>
    public required long Unplaced { get; init; }

    /// <summary>Days late, each order's times its priority.</summary>
    public required long WeightedDays { get; init; }

    /// <summary>Orders late.</summary>
    public required int Late { get; init; }

    /// <summary>What mounting dies and overtime cost.</summary>
    public required double Money { get; init; }

    /// <summary>Dies mounted, those not counted that stood there already.</summary>
    public required int Mountings { get; init; }

    /// <summary>Hours late, each order's times its priority: says where the search is nearer to a day less.</summary>
    public required double WeightedHours { get; init; }

    /// <inheritdoc/>
    public int CompareTo(ClockScore other) =>
        (Unplaced, WeightedDays, Late, Money, Mountings, WeightedHours).CompareTo(
            (other.Unplaced, other.WeightedDays, other.Late, other.Money, other.Mountings, other.WeightedHours));
}
