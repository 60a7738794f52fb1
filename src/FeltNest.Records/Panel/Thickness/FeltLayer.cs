namespace FeltNest.Panel.Thickness;

/// <summary>A layer of the felt and its strain on the ball.</summary>
/// <remarks>Fibres across the felt stay straight and square to it (Kirchhoff), so a layer z outside the neutral one lies on a sphere of
/// radius R + z while its flat lengths are those of every other layer: all its lengths on the ball are 1 + z/R times those of the neutral
/// layer. S. Timoshenko and S. Woinowsky-Krieger, <i>Theory of Plates and Shells</i>, 2nd ed. 1959, chapter 14 (strain of a layer of a
/// shell).</remarks>
public readonly record struct FeltLayer
{
    /// <summary>Which one.</summary>
    public required FeltLayerName Name { get; init; }

    /// <summary>How far it lies outside the neutral layer, mm; negative inside.</summary>
    public required double FromNeutralMm { get; init; }

    /// <summary>Its lengths on the ball over those of the neutral layer.</summary>
    public required double Factor { get; init; }

    /// <summary>Its stretch, 100 (sphere/flat - 1), from that of the neutral layer.</summary>
    public double PercentOf(double neutralPercent) => (Factor * (100 + neutralPercent)) - 100;
}
