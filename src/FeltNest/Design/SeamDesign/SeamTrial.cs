namespace FeltNest.Design.SeamDesign;

/// <summary>A seam met by the search: its panel at rest, what is read off it, and how it lies.</summary>
/// <param name="State">The panel's state.</param>
/// <param name="Look">What is read off it.</param>
/// <param name="Lay">How it lies.</param>
/// <param name="Violation">By how much the limits are passed at most, per cent or mm; 0 where all are kept.</param>
internal sealed record SeamTrial(SeamState State, SeamLook Look, SeamLay Lay, double Violation);
