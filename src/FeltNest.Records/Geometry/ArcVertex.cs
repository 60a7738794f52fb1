namespace FeltNest.Geometry;

/// <summary>A corner or joint of an outline made of arcs: where the piece starts, and how far it turns on its way to the next
/// vertex.</summary>
/// <param name="X">mm.</param>
/// <param name="Y">mm.</param>
/// <param name="Turn">Signed included angle of the arc to the next vertex, radians, counter-clockwise positive; 0 is a straight piece. Less
/// than a full turn.</param>
public readonly record struct ArcVertex(double X, double Y, double Turn)
{
    /// <summary>The place alone.</summary>
    public Point2 Point => new(X, Y);
}
