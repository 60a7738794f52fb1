using FeltNest.Geometry;

namespace FeltNest.Drawing;

/// <summary>A line of straight pieces and arcs.</summary>
/// <param name="Vertices">Vertices; the turn of the last one counts only when the chain is closed.</param>
/// <param name="Closed">Whether the last vertex is joined to the first.</param>
internal sealed record Chain(IReadOnlyList<ArcVertex> Vertices, bool Closed)
{
    /// <summary>An open line through points.</summary>
    public static Chain Open(params Point2[] points) => new(Array.ConvertAll(points, p => new ArcVertex(p.X, p.Y, 0)), false);

    /// <summary>A closed line through points.</summary>
    public static Chain Ring(IEnumerable<Point2> points) => new([.. points.Select(p => new ArcVertex(p.X, p.Y, 0))], true);

    /// <summary>A full circle.</summary>
    public static Chain Circle(Point2 centre, double radius) =>
        new([new ArcVertex(centre.X + radius, centre.Y, Math.PI), new ArcVertex(centre.X - radius, centre.Y, Math.PI)], true);

    /// <summary>A rectangle.</summary>
    public static Chain Rectangle(Box box) =>
        Ring([new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)]);

    /// <summary>The chain enlarged by a factor, then turned (radians), then moved.</summary>
    public Chain Placed(double factor, double angle, Point2 by) => this with
    {
        Vertices = [.. Vertices.Select(v =>
        {
            Point2 p = (v.Point * factor).Turned(angle) + by;
            return new ArcVertex(p.X, p.Y, v.Turn);
        })],
    };

    /// <summary>Points along the chain, arcs replaced by chords that stay within <paramref name="tolerance"/> mm.</summary>
    public IReadOnlyList<Point2> Flattened(double tolerance)
    {
        List<Point2> points = [];
        int pieces = Closed ? Vertices.Count : Vertices.Count - 1;
        for (int i = 0; i < Vertices.Count; i++)
        {
            ArcVertex from = Vertices[i];
            points.Add(from.Point);
            Point2 to = Vertices[(i + 1) % Vertices.Count].Point;
            if (i >= pieces || from.Turn == 0 || from.Point == to)
            {
                continue;
            }

            ArcPiece arc = ArcPiece.Between(from.Point, to, from.Turn);
            double step = arc.ChordStep(tolerance);
            int count = (int)Math.Ceiling(Math.Abs(from.Turn) / step);
            for (int k = 1; k < count; k++)
            {
                points.Add(arc.Centre + arc.Spoke(from.Turn * k / count));
            }
        }

        return points;
    }
}
