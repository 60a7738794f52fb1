using FeltNest.Layout;

namespace FeltNest.Cost.Families;

/// <summary>One ball, or one outline, of a family.</summary>
public sealed record FamilyBall
{
    /// <summary>Its name, once in the family.</summary>
    public required string Name { get; init; }

    /// <summary>Good balls made in a year.</summary>
    public required double BallsPerYear { get; init; }

    /// <summary>Part, gap, trims and rules; the width is that of each felt.</summary>
    public required LayoutRequest Lay { get; init; }
}
