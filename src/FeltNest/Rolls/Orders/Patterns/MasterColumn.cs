namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>A variable of the master, from 0 up.</summary>
internal sealed record MasterColumn
{
    /// <summary>Cost of one of it.</summary>
    public required double Cost { get; init; }

    /// <summary>The most it can be.</summary>
    public required double Most { get; init; }

    /// <summary>Its factor in each row it stands in.</summary>
    public required IReadOnlyList<(int Row, double Factor)> Entries { get; init; }
}
