namespace FeltNest.Ball;

/// <summary>Gaps between two edges that the edge adhesive bridges: below the least the edges press or lap, above the most it does not
/// hold.</summary>
/// <param name="LeastMm">Least gap, mm.</param>
/// <param name="MostMm">Greatest gap, mm.</param>
public sealed record AdhesiveRange(double LeastMm, double MostMm)
{
    /// <summary>Whether a gap lies within.</summary>
    public bool Holds(double gapMm) => gapMm >= LeastMm && gapMm <= MostMm;
}
