namespace FeltNest.Panel.Elastic;

/// <summary>What the felt's edge take-up limit did to a mated elastic panel, against the same panel without the limit.</summary>
/// <remarks>Where the edge is held is known to one node: a part of the seam parameter of about 5 degrees. Near the ends of the held part
/// the limit is lowered at the nodes until the edge keeps it between them too, to 0.01 per cent of flat length: the panel's own greatest
/// edge compression is the true figure.</remarks>
public sealed record EdgeLimitReport
{
    /// <summary>Greatest compression allowed along the edge, per cent of flat length.</summary>
    public required double LimitPercent { get; init; }

    /// <summary>Share of the seam's length on which the edge is held at the limit; 0 where the limit does not act.</summary>
    public required double SharePercent { get; init; }

    /// <summary>The held parts of the seam, ascending.</summary>
    public required IReadOnlyList<SeamInterval> Where { get; init; }

    /// <summary>Area inside the edge before allowances, mm2.</summary>
    public required double EdgeAreaMm2 { get; init; }

    /// <summary>Elastic energy, N mm.</summary>
    public required double EnergyNmm { get; init; }

    /// <summary>Greatest edge compression without the limit.</summary>
    public required double UnlimitedCompressionPercent { get; init; }

    /// <summary>Area inside the edge without the limit, mm2.</summary>
    public required double UnlimitedAreaMm2 { get; init; }

    /// <summary>Energy without the limit, N mm.</summary>
    public required double UnlimitedEnergyNmm { get; init; }

    /// <summary>Whether the limit acts anywhere.</summary>
    public bool IsActive => Where.Count > 0;
}
