namespace FeltNest.Ball;

/// <summary>Gaps between two edges that the edge adhesive bridges: below the least the edges press or lap, above the most it does not
/// hold.</summary>
public sealed record AdhesiveRange
{
    /// <summary>Least gap, mm.</summary>
    public required double LeastMm { get; init; }

    /// <summary>Greatest gap, mm.</summary>
    public required double MostMm { get; init; }

    /// <summary>Whether a gap lies within.</summary>
    public bool Holds(double gapMm) => gapMm >= LeastMm && gapMm <= MostMm;
}
