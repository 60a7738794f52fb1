namespace FeltNest.Drawing.Lettering;

/// <summary>One letter as strokes, in tenths of the capital height, base line at y = 0.</summary>
/// <param name="Width">Width of the letter without the space after it.</param>
/// <param name="Strokes">Strokes.</param>
internal sealed record Glyph(double Width, IReadOnlyList<Chain> Strokes);
