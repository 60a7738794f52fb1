namespace FeltNest.Die.Order;

/// <summary>What the cutting force is worked out from.</summary>
public sealed record ForceFigures
{
    /// <summary>Force per mm of edge and ply of felt, N/mm, of a sharp rule.</summary>
    public required double NPerMmPerPly { get; init; }

    /// <summary>Where it comes from.</summary>
    public required ForceBasis Basis { get; init; }

    /// <summary>Added for pressing the ejection together, %.</summary>
    public required double EjectionPercent { get; init; }

    /// <summary>Added for an edge that dulls, %.</summary>
    public required double ReservePercent { get; init; }

    /// <summary>Rules no further apart than this are close: half the shorter length is added (6.35, quarter of an inch, on a die
    /// maker's page).</summary>
    public required double CloseMm { get; init; }
}
