namespace FeltNest.Die.Proof;

/// <summary>Drift of one cavity and ply: a straight line through its worst distances by least squares.</summary>
/// <param name="Cavity">Cavity.</param>
/// <param name="Ply">Ply.</param>
/// <param name="StartMm">Worst distance at no strikes, mm.</param>
/// <param name="PerThousandMm">Growth in a thousand strikes, mm.</param>
/// <param name="LimitStrikes">Strikes at which the line reaches half the tolerance; null where it does not grow.</param>
public sealed record DieDrift(int Cavity, string Ply, double StartMm, double PerThousandMm, double? LimitStrikes);
