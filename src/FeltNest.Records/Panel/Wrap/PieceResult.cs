namespace FeltNest.Panel.Wrap;

/// <summary>A flat outline laid on a ball: as it is cut, at fitting; after the cure; and its edge drawn to the seam.</summary>
internal sealed record PieceResult
{
    /// <summary>Edge free, at fitting: the cut panel, pulled on by its stretch on application.</summary>
    public required EdgeFreeWrap AsCut { get; init; }

    /// <summary>Edge free, after the felt has shrunk in the cure.</summary>
    public required EdgeFreeWrap AfterCure { get; init; }

    /// <summary>Edge on the seam after the cure, the gap left for the adhesive closed; null where it cannot be drawn to it.</summary>
    public required EdgeHeldWrap? EdgeHeld { get; init; }

    /// <summary>Why not, in one line; null where it can.</summary>
    public required string? WhyNotHeld { get; init; }

    /// <summary>True when the edge was held by the panel's own edge map, false when it slid along the seam.</summary>
    public required bool IsByMap { get; init; }

    /// <summary>By how much the edge was smoothed; null where it was laid as drawn.</summary>
    public required EdgeSmoothing? Smoothing { get; init; }

    /// <summary>How far the outline was turned so that its long axis lies along u, degrees.</summary>
    public required double TurnedDeg { get; init; }
}
