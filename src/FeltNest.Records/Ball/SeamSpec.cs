namespace FeltNest.Ball;

/// <summary>The seam asked for.</summary>
public sealed record SeamSpec
{
    /// <summary>Family of the curve.</summary>
    public required SeamFamily Curve { get; init; }

    /// <summary>Great-circle arc across the waist on the fitted sphere at zero seam gap, mm; 0 where the seam is given as points, which
    /// have a waist of their own.</summary>
    public required double WaistMm { get; init; }

    /// <summary>Gap left between the two panels for the edge adhesive, mm; may be 0.</summary>
    public required double SeamGapMm { get; init; }

    /// <summary>Range of gaps that the edge adhesive bridges, mm; null where the file states none.</summary>
    public AdhesiveRange? Adhesive { get; init; }

    /// <summary>The seam as points in their order along it, where <see cref="Curve"/> is <see cref="SeamFamily.Points"/>; null
    /// otherwise.</summary>
    public IReadOnlyList<SeamPoint>? Points { get; init; }

    /// <summary>Waves of the seam where <see cref="Curve"/> is <see cref="SeamFamily.Shaped"/>; null otherwise.</summary>
    public IReadOnlyList<SeamOffset>? Offsets { get; init; }
}
