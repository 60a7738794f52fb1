using FeltNest.Die.Edge;
using FeltNest.Geometry;

namespace FeltNest.Die.Board;

/// <summary>Places inside a cavity, one after another, each where it has most room from the rule and from those before.</summary>
internal sealed class InnerPlaces
{
    // Places looked at, about so many.
    private const double Looks = 4000;

    private readonly double clear;
    private readonly List<(Point2 At, double FromEdge)> open;
    private readonly List<(Point2 At, double Radius)> taken = [];

    /// <summary>Places of an edge that keep so much from it, mm.</summary>
    public InnerPlaces(DieEdge edge, double clearMm)
    {
        clear = clearMm;
        IReadOnlyList<EdgePiece> pieces = edge.Pieces;
        IReadOnlyList<Point2> ring = edge.Arcs.ContainingPolygon(0.05).Points;
        (double minX, double maxX) = (ring.Min(p => p.X), ring.Max(p => p.X));
        (double minY, double maxY) = (ring.Min(p => p.Y), ring.Max(p => p.Y));
        double step = Math.Sqrt((maxX - minX) * (maxY - minY) / Looks);
        open = [];
        for (double x = minX + (step / 2); x < maxX; x += step)
        {
            for (double y = minY + (step / 2); y < maxY; y += step)
            {
                Point2 at = new(x, y);
                if (Inside(ring, at))
                {
                    open.Add((at, pieces.Min(p => p.DistanceTo(at))));
                }
            }
        }
    }

    /// <summary>The next place for something of a radius, or null where none has room.</summary>
    public Point2? Next(double radius)
    {
        double Room((Point2 At, double FromEdge) o) => Math.Min(
            o.FromEdge - radius - clear,
            taken.Select(t => (t.At - o.At).Length - t.Radius - radius - clear).DefaultIfEmpty(double.PositiveInfinity).Min());
        if (open.Count == 0)
        {
            return null;
        }

        (Point2 At, double FromEdge) best = open.MaxBy(Room);
        if (Room(best) < 0)
        {
            return null;
        }

        taken.Add((best.At, radius));
        return best.At;
    }

    private static bool Inside(IReadOnlyList<Point2> ring, Point2 at)
    {
        bool inside = false;
        for (int i = 0; i < ring.Count; i++)
        {
            Point2 a = ring[i];
            Point2 b = ring[(i + 1) % ring.Count];
            if (a.Y > at.Y != b.Y > at.Y)
            {
                inside ^= Predicates.Turn(a, b, at) > 0 == b.Y > a.Y;
            }
        }

        return inside;
    }
}
