namespace FeltNest.Geometry;

/// <summary>A simple closed polygon, counter-clockwise, seen from the nap side. Coordinates are kept as given; centring and turning are
/// named steps.</summary>
public sealed class Outline
{
    /// <summary>Most corners an outline may have: above this the exact no-fit work no longer pays for what the points add.</summary>
    public const int MostPoints = 10_000;

    private readonly Point2[] points;

    private Outline(Point2[] points)
    {
        this.points = points;
        (Area, Centroid, Perimeter) = Measure(points);
        (MinX, MaxX) = (points.Min(p => p.X), points.Max(p => p.X));
        (MinY, MaxY) = (points.Min(p => p.Y), points.Max(p => p.Y));
    }

    /// <summary>Corners in order, counter-clockwise, first not repeated.</summary>
    public IReadOnlyList<Point2> Points => points;

    /// <summary>Area, mm2, positive.</summary>
    public double Area { get; }

    /// <summary>Area centroid, mm.</summary>
    public Point2 Centroid { get; }

    /// <summary>Length of the boundary, mm.</summary>
    public double Perimeter { get; }

    /// <summary>Lowest x of any corner.</summary>
    public double MinX { get; }

    /// <summary>Highest x of any corner.</summary>
    public double MaxX { get; }

    /// <summary>Lowest y of any corner.</summary>
    public double MinY { get; }

    /// <summary>Highest y of any corner.</summary>
    public double MaxY { get; }

    /// <summary>Makes an outline. A clockwise one is turned round (its coordinates are kept); a closing point equal to the first and
    /// repeated points are dropped.</summary>
    /// <exception cref="GeometryException">Fewer than 3 different points, more than <see cref="MostPoints"/>, a number that is not finite,
    /// no area, or a boundary that crosses or touches itself.</exception>
    public static Outline From(IEnumerable<Point2> corners)
    {
        List<Point2> kept = Different(corners);
        if (kept.Count < 3)
        {
            throw new GeometryException("outline needs at least 3 different points");
        }

        if (kept.Count > MostPoints)
        {
            throw TooManyPoints();
        }

        if (PolygonSets.FirstSelfContact(kept) is { } place)
        {
            throw new GeometryException("outline crosses or touches itself", place);
        }

        double area = Measure(kept).Area;
        if (Math.Abs(area) <= 0)
        {
            throw new GeometryException("outline encloses no area");
        }

        if (area < 0)
        {
            kept.Reverse(1, kept.Count - 1);
        }

        return new Outline([.. kept]);
    }

    // Corners without repeats of the one before; one more than allowed is told from any number more.
    private static List<Point2> Different(IEnumerable<Point2> corners)
    {
        List<Point2> kept = [];
        foreach (Point2 p in corners)
        {
            if (!double.IsFinite(p.X) || !double.IsFinite(p.Y))
            {
                throw new GeometryException("outline has a coordinate that is not a finite number");
            }

            if (kept.Count == 0 || kept[^1] != p)
            {
                kept.Add(p);
            }

            if (kept.Count > MostPoints + 1)
            {
                throw TooManyPoints();
            }
        }

        while (kept.Count > 1 && kept[^1] == kept[0])
        {
            kept.RemoveAt(kept.Count - 1);
        }

        return kept;
    }

    private static GeometryException TooManyPoints() => new($"outline has more than {MostPoints} points");

    /// <summary>The same shape with its area centroid at the origin.</summary>
    public Outline Centred() => Moved(-Centroid);

    /// <summary>The same shape moved.</summary>
    public Outline Moved(Point2 by) => new(Array.ConvertAll(points, p => p + by));

    /// <summary>The same shape turned about the origin, radians counter-clockwise.</summary>
    public Outline Turned(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return new(Array.ConvertAll(points, p => new Point2((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos))));
    }

    // Sums are taken about the first corner, so that an outline far from the origin loses no digits.
    private static (double Area, Point2 Centroid, double Perimeter) Measure(IReadOnlyList<Point2> corners)
    {
        Point2 origin = corners[0];
        double twice = 0;
        double momentX = 0;
        double momentY = 0;
        double perimeter = 0;
        for (int i = 0; i < corners.Count; i++)
        {
            Point2 a = corners[i] - origin;
            Point2 b = corners[(i + 1) % corners.Count] - origin;
            double cross = a.Cross(b);
            twice += cross;
            momentX += (a.X + b.X) * cross;
            momentY += (a.Y + b.Y) * cross;
            perimeter += (b - a).Length;
        }

        return (twice / 2, twice == 0 ? origin : origin + new Point2(momentX / (3 * twice), momentY / (3 * twice)), perimeter);
    }
}
