namespace FeltNest.Layout;

/// <summary>How far a search has come.</summary>
/// <param name="Stage">What it is doing, in words.</param>
/// <param name="PanelsPerMetre">Best layout so far, panels per metre; 0 before the first.</param>
/// <param name="Share">Share of the counted work done, 0 to 1.</param>
public sealed record SearchProgress(string Stage, double PanelsPerMetre, double Share);
