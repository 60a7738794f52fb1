namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Balls of an order that are to be cut from one lot.</summary>
internal readonly record struct LotPortion
{
    /// <summary>Place of the order in the question.</summary>
    public required int Order { get; init; }

    /// <summary>Place of the lot.</summary>
    public required int Lot { get; init; }

    /// <summary>Balls.</summary>
    public required int Balls { get; init; }
}
