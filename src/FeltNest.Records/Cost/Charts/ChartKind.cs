namespace FeltNest.Cost.Charts;

/// <summary>Kinds of control chart.</summary>
internal enum ChartKind
{
    /// <summary>Shares of what was inspected (p).</summary>
    Share,

    /// <summary>Events for a length (u).</summary>
    Rate,

    /// <summary>Single values (individuals).</summary>
    Individuals,

    /// <summary>Differences of neighbours (moving range).</summary>
    MovingRange,
}
