namespace FeltNest.Die.Order;

/// <summary>What the cutting force is worked out from.</summary>
/// <param name="NPerMmPerPly">Force per mm of edge and ply of felt, N/mm, of a sharp rule.</param>
/// <param name="Basis">Where it comes from.</param>
/// <param name="EjectionPercent">Added for pressing the ejection together, %.</param>
/// <param name="ReservePercent">Added for an edge that dulls, %.</param>
/// <param name="CloseMm">Rules no further apart than this are close: half the shorter length is added (6.35, quarter of an inch, on a die
/// maker's page).</param>
public sealed record ForceFigures(double NPerMmPerPly, ForceBasis Basis, double EjectionPercent, double ReservePercent, double CloseMm);
