namespace FeltNest.Geometry;

/// <summary>A point or a vector in a plane, mm.</summary>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>Distance from the origin.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The vector turned 90 degrees counter-clockwise.</summary>
    public Point2 Left => new(-Y, X);

    /// <summary>Sum by components.</summary>
    public static Point2 operator +(Point2 a, Point2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference by components.</summary>
    public static Point2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The opposite vector.</summary>
    public static Point2 operator -(Point2 a) => new(-a.X, -a.Y);

    /// <summary>The vector scaled.</summary>
    public static Point2 operator *(Point2 a, double factor) => new(a.X * factor, a.Y * factor);

    /// <summary>The vector scaled.</summary>
    public static Point2 operator *(double factor, Point2 a) => a * factor;

    /// <summary>Scalar product.</summary>
    public double Dot(Point2 other) => (X * other.X) + (Y * other.Y);

    /// <summary>Z part of the vector product: a length or an area. Decide signs of turns with <see cref="Predicates"/> instead.</summary>
    public double Cross(Point2 other) => (X * other.Y) - (Y * other.X);

    /// <summary>The coordinates, invariant. (The printing a record brings along would follow <see cref="Left"/> without end.)</summary>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");

    /// <summary>Turned about the origin, radians counter-clockwise.</summary>
    public Point2 Turned(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return new((X * cos) - (Y * sin), (X * sin) + (Y * cos));
    }
}
