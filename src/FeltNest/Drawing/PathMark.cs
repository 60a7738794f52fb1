namespace FeltNest.Drawing;

/// <summary>Lines, areas, or both: areas inside an odd count of rings are filled.</summary>
/// <param name="Chains">Lines and rings.</param>
/// <param name="Pen">How the lines are drawn, or null for none.</param>
/// <param name="Fill">Colour of the areas, or null for none.</param>
internal sealed record PathMark(IReadOnlyList<Chain> Chains, Pen? Pen, Colour? Fill = null) : Mark;
