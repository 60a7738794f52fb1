using FeltNest.Geometry;
using FeltNest.Numerics;

namespace FeltNest.Panel.Trace;

/// <summary>The perspective map from places of a flat sheet to places of its picture.</summary>
/// <remarks>R. Hartley, A. Zisserman, <i>Multiple View Geometry in Computer Vision</i>, 2nd ed. 2004, chapter 4: linear in eight values
/// after both sets of places are brought to their middle and to unit size.</remarks>
internal sealed class Homography
{
    private readonly double[] values;
    private readonly (Point2 Middle, double Size) from;
    private readonly (Point2 Middle, double Size) to;

    private Homography(double[] values, (Point2 Middle, double Size) from, (Point2 Middle, double Size) to)
    {
        this.values = values;
        this.from = from;
        this.to = to;
    }

    /// <summary>The map that brings places nearest to others, in the sense of its linear equations; null where four of them do not lie
    /// open.</summary>
    public static Homography? Between(IReadOnlyList<Point2> places, IReadOnlyList<Point2> images)
    {
        const int unknowns = 8;
        (Point2 Middle, double Size) from = Spread(places);
        (Point2 Middle, double Size) to = Spread(images);
        NormalEquations equations = new(unknowns);
        for (int i = 0; i < places.Count; i++)
        {
            Point2 p = (places[i] - from.Middle) * (1 / from.Size);
            Point2 q = (images[i] - to.Middle) * (1 / to.Size);
            equations.Add([p.X, p.Y, 1, 0, 0, 0, -q.X * p.X, -q.X * p.Y], q.X);
            equations.Add([0, 0, 0, p.X, p.Y, 1, -q.Y * p.X, -q.Y * p.Y], q.Y);
        }

        // In units of the spread: far below what four open places give, far above rounding.
        const double least = 1e-9;
        return equations.Solve(least) is { } values ? new Homography(values, from, to) : null;
    }

    /// <summary>Where a place lies in the picture.</summary>
    public Point2 Image(Point2 place)
    {
        Point2 p = (place - from.Middle) * (1 / from.Size);
        double scale = (values[6] * p.X) + (values[7] * p.Y) + 1;
        Point2 q = new(
            ((values[0] * p.X) + (values[1] * p.Y) + values[2]) / scale, ((values[3] * p.X) + (values[4] * p.Y) + values[5]) / scale);
        return (q * to.Size) + to.Middle;
    }

    private static (Point2 Middle, double Size) Spread(IReadOnlyList<Point2> places)
    {
        Point2 middle = new(places.Average(p => p.X), places.Average(p => p.Y));
        return (middle, places.Average(p => (p - middle).Length));
    }
}
