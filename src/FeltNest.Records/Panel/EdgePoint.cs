namespace FeltNest.Panel;

/// <summary>A point of the flat edge before allowances.</summary>
public readonly record struct EdgePoint
{
    /// <summary>mm along the panel.</summary>
    public required double U { get; init; }

    /// <summary>mm across.</summary>
    public required double V { get; init; }

    /// <summary>Seam parameter, radians, 0 at one waist, growing counter-clockwise seen from the nap side as the flat edge
    /// runs.</summary>
    public required double S { get; init; }

    /// <summary>Stretch along the edge, 100 (sphere/flat - 1); negative where the edge is pushed together.</summary>
    public required double StretchPercent { get; init; }
}
