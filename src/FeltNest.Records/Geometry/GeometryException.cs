namespace FeltNest.Geometry;

/// <summary>A shape that cannot be used, with the place in mm where it goes wrong.</summary>
public sealed class GeometryException : FeltNestException
{
    /// <summary>An error at a place.</summary>
    public GeometryException(string message, Point2? place = null)
        : base(place is { } p ? FormattableString.Invariant($"{message} near ({p.X:0.###}, {p.Y:0.###}) mm") : message)
    {
        Place = place;
    }

    /// <summary>Where, in the outline's own frame, mm; null when the whole shape is meant.</summary>
    public Point2? Place { get; }
}
