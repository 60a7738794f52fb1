namespace FeltNest.Die.Proof;

/// <summary>One reading of a blank cut by a die.</summary>
/// <param name="Date">Date as written.</param>
/// <param name="Strikes">Strikes of the die until then.</param>
/// <param name="Cavity">Cavity, from 1.</param>
/// <param name="Ply">top, bottom, or single.</param>
/// <param name="OffMm">Mean distance of the blank off the outline, mm, positive outside.</param>
/// <param name="WorstMm">Greatest distance off the outline, mm, without sign.</param>
public sealed record DieReading(string Date, int Strikes, int Cavity, string Ply, double OffMm, double WorstMm);
