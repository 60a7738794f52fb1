namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>How a lot is cut.</summary>
/// <param name="Portions">Portions of orders wanted of it.</param>
/// <param name="Cuts">Its cuts.</param>
/// <param name="Short">Balls it leaves short.</param>
/// <param name="ReserveShortM">Felt to be kept back that is not left, m.</param>
/// <param name="Cost">What its felt and strikes cost.</param>
internal sealed record LotState(
    IReadOnlyList<LotPortion> Portions, IReadOnlyList<LotCut> Cuts, int Short, double ReserveShortM, double Cost)
{
    /// <summary>What it is worse than another by, below 0 where it is better.</summary>
    /// <param name="other">Another.</param>
    /// <param name="ball">What a ball short counts: above what most cost, so that few are left for other lots.</param>
    /// <param name="metre">What a metre of reserved felt short counts.</param>
    public double Above(LotState other, double ball, double metre) =>
        Cost - other.Cost + (ball * (Short - other.Short)) + (metre * (ReserveShortM - other.ReserveShortM));
}
