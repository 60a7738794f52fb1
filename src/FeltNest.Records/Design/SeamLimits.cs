namespace FeltNest.Design;

/// <summary>What a designed seam must keep. A limit that is null does not bind; the limit along the edge is the felt's own and is kept by
/// the panel itself.</summary>
internal sealed record SeamLimits
{
    /// <summary>Greatest stretch anywhere, per cent of flat length.</summary>
    public required double StretchPercent { get; init; }

    /// <summary>Greatest principal compression anywhere, per cent of flat length.</summary>
    public double? CompressionPercent { get; init; }

    /// <summary>Least geodesic radius of the seam, mm on the fitted sphere.</summary>
    public double? LeastRadiusMm { get; init; }

    /// <summary>Least distance between neighbouring runs of the seam, mm on the fitted sphere.</summary>
    public double? LeastRunMm { get; init; }

    /// <summary>Greatest gap that the fitter feels with the edge free, mm.</summary>
    public double? MostGapMm { get; init; }
}
