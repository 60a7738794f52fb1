namespace FeltNest.Panel;

/// <summary>What an independent look at a flat panel found: every figure is 0 for a perfect one.</summary>
internal sealed record FlatPanelFindings
{
    /// <summary>How far the polygon lies inside the arcs anywhere, mm.</summary>
    public required double OutlineInsideMm { get; init; }

    /// <summary>How far the polygon lies outside the arcs anywhere, mm.</summary>
    public required double OutlineOutsideMm { get; init; }

    /// <summary>Area of the arcs against the area of a fine polygon through them, per cent.</summary>
    public required double AreaDifferencePercent { get; init; }

    /// <summary>Greatest distance between the cut edge and itself after a half-turn, mm.</summary>
    public required double HalfTurnMm { get; init; }

    /// <summary>Length of flat edge times its stretch against the length of the seam, per cent.</summary>
    public required double SeamLengthDifferencePercent { get; init; }

    /// <summary>Area that small triangles of felt cover on the sphere against half the sphere, per cent.</summary>
    public required double SphereAreaDifferencePercent { get; init; }

    /// <summary>Greatest distance of the fitted edge from the seam, mm.</summary>
    public required double EdgeOffSeamMm { get; init; }

    /// <summary>Energy reported against that of small triangles, each evenly stretched, per cent.</summary>
    public required double EnergyDifferencePercent { get; init; }

    /// <summary>Greatest difference in flat length between pieces of edge that meet, per cent, from the edge map alone.</summary>
    public required double EdgeMismatchPercent { get; init; }

    /// <summary>How far any piece of a mated elastic edge is pushed together beyond its limit, per cent of flat length, from the edge
    /// map and the seam alone; 0 where there is no limit.</summary>
    public required double EdgeAboveLimitPercent { get; init; }
}
