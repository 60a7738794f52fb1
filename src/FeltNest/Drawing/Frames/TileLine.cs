using FeltNest.Geometry;

namespace FeltNest.Drawing.Frames;

/// <summary>A line of a drawing true to size.</summary>
internal sealed class TileLine
{
    // Chords that stand for an arc where it is looked at which pages it crosses, mm.
    private const double Chord = 0.1;

    private readonly IReadOnlyList<Point2> points;

    /// <summary>A line.</summary>
    /// <param name="chain">The line, mm.</param>
    /// <param name="pen">How it is drawn.</param>
    public TileLine(Chain chain, Pen pen)
    {
        (Chain, Pen) = (chain, pen);
        IReadOnlyList<Point2> flat = chain.Flattened(Chord);
        points = chain.Closed ? [.. flat, flat[0]] : flat;
    }

    /// <summary>The line, mm.</summary>
    public Chain Chain { get; }

    /// <summary>How it is drawn.</summary>
    public Pen Pen { get; }

    /// <summary>Whether some of the line lies in a box; a box that lies whole inside a ring holds nothing of it.</summary>
    public bool Reaches(Box box)
    {
        for (int i = 1; i < points.Count; i++)
        {
            if (Meets(points[i - 1], points[i], box))
            {
                return true;
            }
        }

        return false;
    }

    // Follows the line clipping of Y.-D. Liang and B. Barsky, ACM Transactions on Graphics 3 (1984), from memory: the part of the piece
    // that lies on the inner side of each of the four sides.
    private static bool Meets(Point2 from, Point2 to, Box box)
    {
        Point2 way = to - from;
        (double first, double last) = (0, 1);
        return Cut(-way.X, from.X - box.MinX) && Cut(way.X, box.MaxX - from.X) && Cut(-way.Y, from.Y - box.MinY)
            && Cut(way.Y, box.MaxY - from.Y);

        bool Cut(double outward, double room)
        {
            if (outward == 0)
            {
                return room >= 0;
            }

            (first, last) = outward < 0 ? (Math.Max(first, room / outward), last) : (first, Math.Min(last, room / outward));
            return first <= last;
        }
    }
}
