namespace FeltNest.Cost.Compare.Findings;

/// <summary>How much of the spread of the best row's cost goes away where one figure becomes known.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Percent">Share of the variance, per cent.</param>
public sealed record SpreadShare(string Figure, double Percent);
