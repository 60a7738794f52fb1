namespace FeltNest.Panel;

/// <summary>Greatest strains of the cover and its elastic energy.</summary>
public sealed record StrainSummary
{
    /// <summary>Greatest principal stretch anywhere, 100 (sphere/flat - 1).</summary>
    public required double MaxStretchPercent { get; init; }

    /// <summary>Greatest principal compression anywhere, 100 (1 - sphere/flat).</summary>
    public required double MaxCompressionPercent { get; init; }

    /// <summary>Greatest compression along the edge; 0 where the edge is nowhere pushed together.</summary>
    public required double EdgeMaxCompressionPercent { get; init; }

    /// <summary>100 max |stretch(s)/stretch(pi/2 - s) - 1| along the edge, stretches as ratios sphere/flat.</summary>
    public required double EdgeMismatchPercent { get; init; }

    /// <summary>Elastic energy of one panel, N mm.</summary>
    public required double EnergyNmm { get; init; }

    /// <summary>Whether strains at a tip read a spike that is left out of the greatest ones: the seam crosses the tip so bluntly that the
    /// panel's polynomials do not settle at the tip itself.</summary>
    public bool HasTipSpike { get; init; }
}
