using FeltNest.Die.Edge;
using FeltNest.Geometry;
using FeltNest.Layout;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace FeltNest.Die.Check;

/// <summary>Measures a cutting edge against the part it is to cut with NetTopologySuite; shares no code with the fit.</summary>
internal static class DieEdgeCheck
{
    // Chords stay this near to the arcs they stand for, mm.
    private const double Chord = 1e-6;

    // Bends above this are corners of the part, degrees, where a corner of the part stands within so many mm.
    private const double CornerDeg = 0.5;
    private const double CornerNearMm = 1e-3;

    // Most steps along one arc.
    private const int MostSteps = 20_000;

    private static readonly GeometryFactory Factory = new();

    /// <summary>Measures an edge.</summary>
    public static EdgeVerdict Measure(LayoutPart part, DieEdge edge)
    {
        IReadOnlyList<ArcVertex> wanted = part.Arcs?.Vertices ?? [.. part.Outline.Points.Select(p => new ArcVertex(p.X, p.Y, 0))];
        Coordinate[] ours = Walk(edge.Arcs.Vertices, Chord);
        Coordinate[] theirs = Walk(wanted, Chord);
        double off = Math.Max(Farthest(ours, theirs), Farthest(theirs, ours));
        double area = Factory.CreatePolygon([.. ours, ours[0].Copy()]).Area;
        double partArea = Factory.CreatePolygon([.. theirs, theirs[0].Copy()]).Area;
        double mirror = 0;
        foreach ((EdgeMirrors about, double x, double y) in new[] { (EdgeMirrors.AboutX, 1.0, -1.0), (EdgeMirrors.AboutY, -1.0, 1.0) })
        {
            if (edge.Mirrors.HasFlag(about))
            {
                mirror = Math.Max(mirror, Farthest([.. edge.Arcs.Vertices.Select(v => new Coordinate(x * v.X, y * v.Y))], ours));
            }
        }

        return new EdgeVerdict
        {
            OffMm = off,
            TangentBreakDeg = Break(edge.Arcs.Vertices, wanted),
            AreaShare = Math.Abs(area - partArea) / partArea,
            MirrorOffMm = mirror,
        };
    }

    private static double Farthest(Coordinate[] from, Coordinate[] to)
    {
        IndexedFacetDistance tree = new(Factory.CreateLineString([.. to, to[0].Copy()]));
        return from.Max(at => tree.Distance(Factory.CreatePoint(at)));
    }

    private static double Break(IReadOnlyList<ArcVertex> edge, IReadOnlyList<ArcVertex> part)
    {
        ArcVertex[] corners = [.. part.Where((_, i) => BendDeg(part, i) > CornerDeg)];
        double worst = 0;
        for (int i = 0; i < edge.Count; i++)
        {
            ArcVertex at = edge[i];
            if (!corners.Any(c => Math.Abs(c.X - at.X) < CornerNearMm && Math.Abs(c.Y - at.Y) < CornerNearMm))
            {
                worst = Math.Max(worst, BendDeg(edge, i));
            }
        }

        return worst;
    }

    private static double BendDeg(IReadOnlyList<ArcVertex> chain, int i)
    {
        ArcVertex before = chain[(i + chain.Count - 1) % chain.Count];
        ArcVertex at = chain[i];
        ArcVertex after = chain[(i + 1) % chain.Count];
        double arriving = Math.Atan2(at.Y - before.Y, at.X - before.X) + (before.Turn / 2);
        double leaving = Math.Atan2(after.Y - at.Y, after.X - at.X) - (at.Turn / 2);
        return Math.Abs(Math.IEEERemainder(leaving - arriving, 2 * Math.PI)) * 180 / Math.PI;
    }

    /// <summary>Length of a closed chain, and of the line so far outside it, mm; at corners that line goes on to where it meets, those
    /// sharper than 10 degrees counted as 10.</summary>
    internal static (double Chain, double Beside) Lengths(IReadOnlyList<ArcVertex> chain, double outside)
    {
        Coordinate[] places = Walk(chain, Chord);
        double length = 0;
        double beside = 0;
        for (int i = 0; i < places.Length; i++)
        {
            Coordinate a = places[i];
            Coordinate b = places[(i + 1) % places.Length];
            Coordinate c = places[(i + 2) % places.Length];
            double bend = Math.IEEERemainder(Math.Atan2(c.Y - b.Y, c.X - b.X) - Math.Atan2(b.Y - a.Y, b.X - a.X), 2 * Math.PI);
            double sharpest = 170 * Math.PI / 180;
            length += a.Distance(b);
            beside += 2 * outside * Math.Tan(Math.Clamp(bend, -sharpest, sharpest) / 2);
        }

        return (length, length + beside);
    }

    /// <summary>The chain in chords that stay within <paramref name="within"/> mm, by the angle of each chord to the tangent where it
    /// starts.</summary>
    internal static Coordinate[] Walk(IReadOnlyList<ArcVertex> chain, double within)
    {
        List<Coordinate> places = [];
        for (int i = 0; i < chain.Count; i++)
        {
            ArcVertex from = chain[i];
            ArcVertex to = chain[(i + 1) % chain.Count];
            double dx = to.X - from.X;
            double dy = to.Y - from.Y;
            double half = from.Turn / 2;
            double chord = Math.Sqrt((dx * dx) + (dy * dy));
            places.Add(new Coordinate(from.X, from.Y));
            if (Math.Abs(half) < 1e-13)
            {
                continue;
            }

            double radius = chord / 2 / Math.Sin(half);
            double heading = Math.Atan2(dy, dx) - half;
            int count = 1 + (int)Math.Min(MostSteps, Math.Abs(half) / Math.Acos(Math.Max(-1, 1 - (within / Math.Abs(radius)))));
            for (int k = 1; k < count; k++)
            {
                double turned = from.Turn * k / count;
                double reach = 2 * radius * Math.Sin(turned / 2);
                places.Add(
                    new Coordinate(
                        from.X + (reach * Math.Cos(heading + (turned / 2))), from.Y + (reach * Math.Sin(heading + (turned / 2)))));
            }
        }

        return [.. places];
    }
}
