namespace FeltNest.Panel.Trial;

/// <summary>One smooth part of the gap that identical centred panels can show.</summary>
/// <param name="Wave">The part of the gap beside the one aimed at, mm.</param>
/// <param name="Amount">The same amount with its uncertainty.</param>
internal readonly record struct TrialPart(EdgeWave Wave, TrialAmount Amount);
