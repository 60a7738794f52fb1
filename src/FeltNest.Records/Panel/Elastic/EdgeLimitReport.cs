namespace FeltNest.Panel.Elastic;

/// <summary>What the felt's edge take-up limit did to a mated elastic panel, against the same panel without the limit.</summary>
/// <remarks>Where the edge is held is known to one node: a part of the seam parameter of about 5 degrees. Near the ends of the held part
/// the limit is lowered at the nodes until the edge keeps it between them too, to 0.01 per cent of flat length: the panel's own greatest
/// edge compression is the true figure.</remarks>
/// <param name="LimitPercent">Greatest compression allowed along the edge, per cent of flat length.</param>
/// <param name="SharePercent">Share of the seam's length on which the edge is held at the limit; 0 where the limit does not act.</param>
/// <param name="Where">The held parts of the seam, ascending.</param>
/// <param name="EdgeAreaMm2">Area inside the edge before allowances, mm2.</param>
/// <param name="EnergyNmm">Elastic energy, N mm.</param>
/// <param name="UnlimitedCompressionPercent">Greatest edge compression without the limit.</param>
/// <param name="UnlimitedAreaMm2">Area inside the edge without the limit, mm2.</param>
/// <param name="UnlimitedEnergyNmm">Energy without the limit, N mm.</param>
public sealed record EdgeLimitReport(
    double LimitPercent,
    double SharePercent,
    IReadOnlyList<SeamInterval> Where,
    double EdgeAreaMm2,
    double EnergyNmm,
    double UnlimitedCompressionPercent,
    double UnlimitedAreaMm2,
    double UnlimitedEnergyNmm)
{
    /// <summary>Whether the limit acts anywhere.</summary>
    public bool IsActive => Where.Count > 0;
}
