namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>How a lot is cut.</summary>
internal sealed record LotState
{
    /// <summary>Portions of orders wanted of it.</summary>
    public required IReadOnlyList<LotPortion> Portions { get; init; }

    /// <summary>Its cuts.</summary>
    public required IReadOnlyList<LotCut> Cuts { get; init; }

    /// <summary>Balls it leaves short.</summary>
    public required int Short { get; init; }

    /// <summary>Felt to be kept back that is not left, m.</summary>
    public required double ReserveShortM { get; init; }

    /// <summary>What its felt and strikes cost.</summary>
    public required double Cost { get; init; }

    /// <summary>What it is worse than another by, below 0 where it is better.</summary>
    /// <param name="other">Another.</param>
    /// <param name="ball">What a ball short counts: above what most cost, so that few are left for other lots.</param>
    /// <param name="metre">What a metre of reserved felt short counts.</param>
    public double Above(LotState other, double ball, double metre) =>
        Cost - other.Cost + (ball * (Short - other.Short)) + (metre * (ReserveShortM - other.ReserveShortM));
}
