namespace FeltNest.Geometry;

/// <summary>A closed outline of arcs and straight pieces, counter-clockwise: the true curve of a part, from which area and perimeter are
/// taken.</summary>
public sealed class ArcOutline
{
    // An arc that rises less than this over its chord, mm, is a straight piece: a thousandth of what any clearance is checked to.
    private const double StraightMm = 1e-7;

    private readonly ArcVertex[] vertices;

    private ArcOutline(ArcVertex[] vertices)
    {
        this.vertices = vertices;
        (Area, Perimeter, Centroid) = Measure(vertices);
    }

    /// <summary>Vertices in order; each carries the turn of the piece to the next, the last one back to the first.</summary>
    public IReadOnlyList<ArcVertex> Vertices => vertices;

    /// <summary>Area inside the arcs, mm2, positive.</summary>
    public double Area { get; }

    /// <summary>Length along the arcs, mm.</summary>
    public double Perimeter { get; }

    /// <summary>Area centroid of the region inside the arcs, mm.</summary>
    public Point2 Centroid { get; }

    /// <summary>Makes an outline; a clockwise chain is turned round.</summary>
    /// <exception cref="GeometryException">Fewer than 2 vertices, a number that is not finite, a turn of a full circle or more, repeated
    /// vertices, or no area.</exception>
    public static ArcOutline From(IEnumerable<ArcVertex> chain)
    {
        ArcVertex[] given = [.. chain];
        if (given.Length < 2)
        {
            throw new GeometryException("arc outline needs at least 2 vertices");
        }

        for (int i = 0; i < given.Length; i++)
        {
            given[i] = Sound(given[i], given[(i + 1) % given.Length].Point);
        }

        double area = Measure(given).Area;
        if (area < 0)
        {
            given = Reversed(given);
        }
        else if (area == 0)
        {
            throw new GeometryException("arc outline encloses no area");
        }

        return new ArcOutline(given);
    }

    // A vertex that may stand before the next, its piece made straight where it hardly bends.
    private static ArcVertex Sound(ArcVertex v, Point2 next)
    {
        if (!double.IsFinite(v.X) || !double.IsFinite(v.Y) || !double.IsFinite(v.Turn))
        {
            throw new GeometryException("arc outline has a number that is not finite");
        }

        if (Math.Abs(v.Turn) >= 2 * Math.PI)
        {
            throw new GeometryException("arc turns a full circle or more", v.Point);
        }

        if (v.Point == next)
        {
            throw new GeometryException("arc outline repeats a vertex", v.Point);
        }

        // The centre of a flatter piece would be so far away that nothing could be reckoned from it.
        return Math.Abs(Math.Tan(v.Turn / 4)) * (next - v.Point).Length / 2 < StraightMm ? v with { Turn = 0 } : v;
    }

    /// <summary>The same outline moved.</summary>
    public ArcOutline Moved(Point2 by) => new(Array.ConvertAll(vertices, v => new ArcVertex(v.X + by.X, v.Y + by.Y, v.Turn)));

    /// <summary>A polygon that contains the region inside the arcs and is nowhere further than <paramref name="tolerance"/> mm outside
    /// it.</summary>
    /// <remarks>Arcs that bulge outwards become tangent polygons, arcs that bulge inwards become chords. Where two outward pieces do not
    /// meet tangentially the joint itself stays a corner.</remarks>
    /// <exception cref="GeometryException">The polygon crosses itself, so the arcs do.</exception>
    public Outline ContainingPolygon(double tolerance)
    {
        List<Point2> corners = [];
        for (int i = 0; i < vertices.Length; i++)
        {
            ArcVertex from = vertices[i];
            Point2 start = from.Point;
            Point2 end = vertices[(i + 1) % vertices.Length].Point;
            corners.Add(start);
            if (from.Turn == 0)
            {
                continue;
            }

            ArcPiece arc = ArcPiece.Between(start, end, from.Turn);
            double step = from.Turn > 0 ? arc.TangentStep(tolerance) : arc.ChordStep(tolerance);
            double pieces = Math.Max(from.Turn > 0 ? 1 + Math.Floor(from.Turn / 3) : 1, Math.Ceiling(Math.Abs(from.Turn) / step));
            if (corners.Count - i + pieces > Outline.MostPoints)
            {
                throw new GeometryException($"outline has more than {Outline.MostPoints} points where its arcs are divided", start);
            }

            int count = (int)pieces;
            double share = from.Turn / count;
            for (int k = 0; k < count; k++)
            {
                if (from.Turn > 0)
                {
                    corners.Add(arc.Centre + (arc.Spoke((k + 0.5) * share) * (1 / Math.Cos(share / 2))));
                }
                else if (k > 0)
                {
                    corners.Add(arc.Centre + arc.Spoke(k * share));
                }
            }
        }

        return Outline.From(WithoutStraightJoints(corners));
    }

    // Joints that lie on the straight line between two tangent corners add nothing to the polygon. A joint this near to the line, in mm, is
    // dropped only when it lies inside or on it, so the polygon never loses area.
    private static List<Point2> WithoutStraightJoints(List<Point2> corners)
    {
        const double straight = 1e-9;
        List<Point2> kept = [];
        for (int i = 0; i < corners.Count; i++)
        {
            Point2 before = kept.Count > 0 ? kept[^1] : corners[^1];
            Point2 here = corners[i];
            Point2 after = corners[(i + 1) % corners.Count];
            Point2 chord = after - before;
            double outside = chord.Length == 0 ? double.PositiveInfinity : -chord.Cross(here - before) / chord.Length;
            bool between = chord.Dot(here - before) > 0 && chord.Dot(here - after) < 0;
            if (!(between && outside <= 0 && outside > -straight))
            {
                kept.Add(here);
            }
        }

        return kept;
    }

    private static ArcVertex[] Reversed(ArcVertex[] chain)
    {
        ArcVertex[] back = new ArcVertex[chain.Length];
        for (int i = 0; i < chain.Length; i++)
        {
            ArcVertex at = chain[(chain.Length - i) % chain.Length];
            ArcVertex piece = chain[chain.Length - 1 - i];
            back[i] = new ArcVertex(at.X, at.Y, -piece.Turn);
        }

        return back;
    }

    private static (double Area, double Perimeter, Point2 Centroid) Measure(ArcVertex[] chain)
    {
        Point2 origin = chain[0].Point;
        double area = 0;
        double perimeter = 0;
        double momentX = 0;
        double momentY = 0;
        for (int i = 0; i < chain.Length; i++)
        {
            Point2 a = chain[i].Point - origin;
            Point2 b = chain[(i + 1) % chain.Length].Point - origin;
            double half = a.Cross(b) / 2;
            area += half;
            momentX += (a.X + b.X) / 3 * half;
            momentY += (a.Y + b.Y) / 3 * half;
            if (chain[i].Turn == 0)
            {
                perimeter += (b - a).Length;
                continue;
            }

            ArcPiece arc = ArcPiece.Between(a, b, chain[i].Turn);
            perimeter += arc.Length;
            area += arc.SegmentArea;
            momentX += arc.SegmentCentroid.X * arc.SegmentArea;
            momentY += arc.SegmentCentroid.Y * arc.SegmentArea;
        }

        return (area, perimeter, area == 0 ? origin : origin + new Point2(momentX / area, momentY / area));
    }
}
