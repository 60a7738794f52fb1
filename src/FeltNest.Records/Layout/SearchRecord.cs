using FeltNest.Layout.Quality;

namespace FeltNest.Layout;

/// <summary>How a layout was found and how good it is known to be.</summary>
public sealed record SearchRecord
{
    /// <summary>Seed used.</summary>
    public required int Seed { get; init; }

    /// <summary>Effort asked for.</summary>
    public required int Effort { get; init; }

    /// <summary>True when a time limit or an interrupt ended the search; such a result is not promised to repeat.</summary>
    public required bool CutShort { get; init; }

    /// <summary>What found the layout, in words.</summary>
    public required string Method { get; init; }

    /// <summary>Grid on which the row class was searched to the end, or null.</summary>
    public required GridProof? ProvedOnGrid { get; init; }

    /// <summary>Best lattice in the infinite plane with the same gap: a reference, not a bound.</summary>
    public required double PlaneUtilisationPercent { get; init; }

    /// <summary>Least distance between any two cut edges that the independent check measured, mm.</summary>
    public required double LeastGapMm { get; init; }

    /// <summary>What rows of any tilt would give where the rule is stricter, or null when not asked or not better.</summary>
    public required double? FreerRowsPanelsPerMetre { get; init; }

    /// <summary>No layout uses more of the full roll width than this, per cent; 0 where not stated.</summary>
    public double UpperBoundPercent { get; init; }

    /// <summary>Where the waste comes from, or null where not worked out.</summary>
    public LossSplit? Loss { get; init; }

    /// <summary>What each way of searching reached, best first.</summary>
    public IReadOnlyList<MethodReach> Methods { get; init; } = [];

    /// <summary>What the rules cost.</summary>
    public IReadOnlyList<RuleCost> RuleCosts { get; init; } = [];
}
