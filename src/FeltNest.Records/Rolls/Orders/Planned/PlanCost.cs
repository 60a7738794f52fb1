namespace FeltNest.Rolls.Orders.Planned;

/// <summary>The cost of a plan, in its currency.</summary>
internal sealed record PlanCost
{
    /// <summary>Rolls begun and rolls bought, at their price.</summary>
    public required decimal Felt { get; init; }

    /// <summary>What goes back to stock of them, at what remnants are worth.</summary>
    public required decimal KeptValue { get; init; }

    /// <summary>Labour, machine and board.</summary>
    public required decimal Strikes { get; init; }

    /// <summary>Making and ruling dies.</summary>
    public required decimal Dies { get; init; }

    /// <summary>Hours of changing dies.</summary>
    public required decimal ChangeOvers { get; init; }

    /// <summary>Overtime of presses.</summary>
    public required decimal Overtime { get; init; }

    /// <summary>All of it.</summary>
    public decimal Total => Felt - KeptValue + Strikes + Dies + ChangeOvers + Overtime;
}
