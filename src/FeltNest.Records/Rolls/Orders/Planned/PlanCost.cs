namespace FeltNest.Rolls.Orders.Planned;

/// <summary>The cost of a plan, in its currency.</summary>
/// <param name="Felt">Rolls begun and rolls bought, at their price.</param>
/// <param name="KeptValue">What goes back to stock of them, at what remnants are worth.</param>
/// <param name="Strikes">Labour, machine and board.</param>
/// <param name="Dies">Making and ruling dies.</param>
/// <param name="ChangeOvers">Hours of changing dies.</param>
public sealed record PlanCost(decimal Felt, decimal KeptValue, decimal Strikes, decimal Dies, decimal ChangeOvers)
{
    /// <summary>All of it.</summary>
    public decimal Total => Felt - KeptValue + Strikes + Dies + ChangeOvers;
}
