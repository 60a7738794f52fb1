using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>A turn about the origin and then a move.</summary>
/// <param name="Turn">Radians, counter-clockwise.</param>
/// <param name="Move">mm.</param>
internal sealed record RigidMove(double Turn, Point2 Move)
{
    /// <summary>No move at all.</summary>
    public static readonly RigidMove None = new(0, default);

    /// <summary>The turn from -180 to 180 degrees.</summary>
    public double TurnDeg => double.RadiansToDegrees(Math.IEEERemainder(Turn, 2 * Math.PI));

    /// <summary>Where a point goes.</summary>
    public Point2 Apply(Point2 p) => p.Turned(Turn) + Move;

    /// <summary>Where a point came from.</summary>
    public Point2 Back(Point2 p) => (p - Move).Turned(-Turn);

    /// <summary>This move, then a small turn about a pivot and a shift.</summary>
    public RigidMove Then(double turn, Point2 pivot, Point2 shift) =>
        new(Turn + turn, pivot + (Move - pivot).Turned(turn) + shift);
}
