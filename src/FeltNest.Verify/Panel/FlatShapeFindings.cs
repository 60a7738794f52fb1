namespace FeltNest.Panel;

/// <summary>What an independent look at a cut edge found.</summary>
internal readonly record struct FlatShapeFindings
{
    /// <summary>How far the polygon lies inside the arcs anywhere, mm; 0 for a sound one.</summary>
    public required double OutlineInsideMm { get; init; }

    /// <summary>How far the polygon lies outside the arcs anywhere, mm.</summary>
    public required double OutlineOutsideMm { get; init; }

    /// <summary>Area within the arcs, mm2.</summary>
    public required double AreaMm2 { get; init; }

    /// <summary>Length of the arcs, mm.</summary>
    public required double PerimeterMm { get; init; }

    /// <summary>Greatest distance between the cut edge and itself after a half-turn, mm.</summary>
    public required double HalfTurnMm { get; init; }
}
