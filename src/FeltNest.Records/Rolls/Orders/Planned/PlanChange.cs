namespace FeltNest.Rolls.Orders.Planned;

/// <summary>What a plan does otherwise for an order than the plan before it.</summary>
internal sealed record PlanChange
{
    /// <summary>Name of the order.</summary>
    public required string Order { get; init; }

    /// <summary>What is changed.</summary>
    public required ChangedThing What { get; init; }

    /// <summary>What the plan before had for the part that is not cut yet.</summary>
    public required string Before { get; init; }

    /// <summary>What this plan has; blank where nothing of the order is cut.</summary>
    public required string After { get; init; }

    /// <summary>Why, where the inputs tell it.</summary>
    public required string Reason { get; init; }
}
