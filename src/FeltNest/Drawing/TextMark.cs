using FeltNest.Geometry;

namespace FeltNest.Drawing;

/// <summary>One line of text, drawn in strokes by every writer.</summary>
/// <param name="Text">The text.</param>
/// <param name="At">Place of the anchor on the base line, mm.</param>
/// <param name="HeightMm">Height of the capitals, mm.</param>
/// <param name="Colour">Colour.</param>
/// <param name="Anchor">Which end stands at the place.</param>
/// <param name="Angle">Direction of the base line, radians counter-clockwise.</param>
public sealed record TextMark(
    string Text, Point2 At, double HeightMm, Colour Colour, TextAnchor Anchor = TextAnchor.Start, double Angle = 0) : Mark;
