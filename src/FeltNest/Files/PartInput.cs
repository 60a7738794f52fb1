using FeltNest.Files.Balls;
using FeltNest.Files.Outlines;

namespace FeltNest.Files;

/// <summary>What a file gave to lay: a ball whose panel is still to be computed, or a flat outline; exactly one of the two.</summary>
/// <param name="Ball">The ball, or null.</param>
/// <param name="Outline">The outline, or null.</param>
internal sealed record PartInput(BallInput? Ball, ImportedOutline? Outline);
