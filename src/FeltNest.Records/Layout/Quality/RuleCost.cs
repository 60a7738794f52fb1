namespace FeltNest.Layout.Quality;

/// <summary>What the roll would give without one of the rules.</summary>
/// <param name="Rule">The rule, in words.</param>
/// <param name="PanelsPerMetreWithout">Panels per metre when it is dropped, never below the layout's own.</param>
/// <param name="Words">What this rests on, in words.</param>
public sealed record RuleCost(string Rule, double PanelsPerMetreWithout, string Words);
