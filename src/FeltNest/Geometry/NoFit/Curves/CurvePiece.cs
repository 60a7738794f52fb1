namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>A directed straight piece of closed curves that wind once more round what lies on their left than round what lies on their
/// right.</summary>
internal readonly record struct CurvePiece
{
    /// <summary>Start, mm.</summary>
    public required Point2 From { get; init; }

    /// <summary>End, mm.</summary>
    public required Point2 To { get; init; }

    /// <summary>False where a meeting of the two parts begins on the left (on the piece itself they only touch). True where a reflex
    /// corner stands on an edge: two meetings on the left, and on the piece itself, are one on the right.</summary>
    public bool Joins { get; init; }
}
