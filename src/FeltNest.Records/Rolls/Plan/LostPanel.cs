namespace FeltNest.Rolls.Plan;

/// <summary>A panel of a strike that is no good.</summary>
/// <param name="Panel">Index into the panels of the pattern.</param>
/// <param name="Cause">Why.</param>
public readonly record struct LostPanel(int Panel, LossCause Cause);
