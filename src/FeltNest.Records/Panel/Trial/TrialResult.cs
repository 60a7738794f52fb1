namespace FeltNest.Panel.Trial;

/// <summary>A trial wrap studied: what it shows, and the panel before and after.</summary>
/// <param name="Finding">What the readings show.</param>
/// <param name="Cut">The panel as it is drawn now.</param>
/// <param name="Corrected">The corrected panel; null where there is nothing to mend.</param>
internal sealed record TrialResult(TrialFinding Finding, FlatPanel Cut, FlatPanel? Corrected);
