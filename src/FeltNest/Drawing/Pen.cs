namespace FeltNest.Drawing;

/// <summary>How a line is drawn.</summary>
/// <param name="WidthMm">Width of the line, mm.</param>
/// <param name="Colour">Colour.</param>
/// <param name="Dashes">Lengths of dash, gap, dash, gap ... in mm; empty for a full line.</param>
internal sealed record Pen(double WidthMm, Colour Colour, params double[] Dashes);
