namespace FeltNest.Rolls.Orders.Model.Mixed;

/// <summary>How far an aim was reached.</summary>
internal readonly record struct ModelReach
{
    /// <summary>What was reached.</summary>
    public required double Value { get; init; }

    /// <summary>What no solution can be below.</summary>
    public required double Bound { get; init; }

    /// <summary>Whether the two meet.</summary>
    public required bool Proved { get; init; }
}
