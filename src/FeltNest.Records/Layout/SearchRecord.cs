using FeltNest.Layout.Quality;

namespace FeltNest.Layout;

/// <summary>How a layout was found and how good it is known to be.</summary>
/// <param name="Seed">Seed used.</param>
/// <param name="Effort">Effort asked for.</param>
/// <param name="CutShort">True when a time limit or an interrupt ended the search; such a result is not promised to repeat.</param>
/// <param name="Method">What found the layout, in words.</param>
/// <param name="ProvedOnGrid">Grid on which the row class was searched to the end, or null.</param>
/// <param name="PlaneUtilisationPercent">Best lattice in the infinite plane with the same gap: a reference, not a bound.</param>
/// <param name="LeastGapMm">Least distance between any two cut edges that the independent check measured, mm.</param>
/// <param name="FreerRowsPanelsPerMetre">What rows of any tilt would give where the rule is stricter, or null when not asked or not
/// better.</param>
public sealed record SearchRecord(
    int Seed, int Effort, bool CutShort, string Method, GridProof? ProvedOnGrid, double PlaneUtilisationPercent, double LeastGapMm,
    double? FreerRowsPanelsPerMetre)
{
    /// <summary>No layout uses more of the full roll width than this, per cent; 0 where not stated.</summary>
    public double UpperBoundPercent { get; init; }

    /// <summary>Where the waste comes from, or null where not worked out.</summary>
    public LossSplit? Loss { get; init; }

    /// <summary>What each way of searching reached, best first.</summary>
    public IReadOnlyList<MethodReach> Methods { get; init; } = [];

    /// <summary>What the rules cost.</summary>
    public IReadOnlyList<RuleCost> RuleCosts { get; init; } = [];
}
