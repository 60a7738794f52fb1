using FeltNest.Panel.Disc;

namespace FeltNest.Panel.Elastic;

/// <summary>An elastic flattening with what was held along its edge.</summary>
/// <param name="Map">The flat map.</param>
/// <param name="Solve">How it was found.</param>
/// <param name="Held">Nodes held at the edge limit: node i stands for |s - pi/4| from i to i + 1 times the spacing, and for what symmetry
/// makes equal to it.</param>
/// <param name="Spacing">Distance between nodes in s, radians.</param>
internal sealed record ElasticPanel(FlatMap Map, PanelSolve Solve, IReadOnlyList<int> Held, double Spacing);
