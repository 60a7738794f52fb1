using FeltNest.Geometry;

namespace FeltNest.Drawing;

/// <summary>One line of text, drawn in strokes by every writer.</summary>
internal sealed record TextMark : Mark
{
    /// <summary>The text.</summary>
    public required string Text { get; init; }

    /// <summary>Place of the anchor on the base line, mm.</summary>
    public required Point2 At { get; init; }

    /// <summary>Height of the capitals, mm.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Colour.</summary>
    public required Colour Colour { get; init; }

    /// <summary>Which end stands at the place.</summary>
    public TextAnchor Anchor { get; init; } = TextAnchor.Start;

    /// <summary>Direction of the base line, radians counter-clockwise.</summary>
    public double Angle { get; init; }
}
