using FeltNest.Geometry;

namespace FeltNest.Die.Edge;

/// <summary>Finds the symmetries of an outline about its frame's origin, the part that is enough to make the rest, and makes the
/// rest.</summary>
internal static class EdgeSymmetry
{
    // Outlines that differ by less than this share of their size are their own mirror or half-turn: what drawings round away.
    private const double Same = 1e-6;

    // Arcs whose centres and radii agree to this, mm, are one arc.
    private const double OneArc = 1e-7;

    /// <summary>The symmetries of a polygon that stands for the part.</summary>
    public static (EdgeMirrors Mirrors, bool HalfTurn) Of(Outline outline)
    {
        double tolerance = Same * outline.Perimeter;
        bool aboutX = OutlineSymmetry.HasMirror(outline, tolerance);
        bool half = OutlineSymmetry.HasHalfTurn(outline, default, tolerance);
        bool aboutY = aboutX ? half : OutlineSymmetry.HasMirror(outline.Turned(Math.PI / 2), tolerance);
        return ((aboutX ? EdgeMirrors.AboutX : 0) | (aboutY ? EdgeMirrors.AboutY : 0), half);
    }

    /// <summary>The mirror on which the domain starts, or ends, as a unit vector; none where it ends on no mirror.</summary>
    public static Point2 Axis(EdgeMirrors mirrors, bool start) => mirrors switch
    {
        EdgeMirrors.Both => start ? new Point2(0, 1) : new Point2(1, 0),
        EdgeMirrors.AboutX => new Point2(1, 0),
        EdgeMirrors.AboutY => new Point2(0, 1),
        _ => default,
    };

    /// <summary>Where the domain runs along the chain, mm: from a mirror to the next, or from the place of least radius half or all of the
    /// way round.</summary>
    public static (double From, double To) Domain(SourceChain source, EdgeMirrors mirrors, bool halfTurn)
    {
        double length = source.Length;
        if (mirrors == EdgeMirrors.None)
        {
            double start = source.Corners.Count > 0 ? source.Corners[0] : Tightest(source);
            return (start, start + (halfTurn ? length / 2 : length));
        }

        // A closed line that is its own mirror crosses it just twice, and either place will do: both may lie on one side of the origin, as
        // in a fork. Preferred is the crossing with the mirror where the chain, run counter-clockwise, comes from its lower or right half:
        // found by halving the chain's distance to the mirror.
        bool aboutX = mirrors == EdgeMirrors.AboutX;
        double from = Crossing(source, aboutX ? p => p.Y : p => p.X, aboutX ? p => p.X > 0 : p => p.Y < 0);
        return (from, from + (mirrors == EdgeMirrors.Both ? length / 4 : length / 2));
    }

    /// <summary>The whole outline from its domain, arcs that meet on one circle joined.</summary>
    public static List<ArcVertex> Whole((List<ArcVertex> Chain, Point2 End) domain, EdgeMirrors mirrors, bool halfTurn)
    {
        List<ArcVertex> chain = [.. domain.Chain];
        if (mirrors != EdgeMirrors.None)
        {
            // From the domain's end back along its mirror image. Over the end's own mirror: x for both and for x alone, else y.
            bool overX = mirrors != EdgeMirrors.AboutY;
            Point2 Image(Point2 p) => overX ? new Point2(p.X, -p.Y) : new Point2(-p.X, p.Y);
            List<ArcVertex> ends = [.. domain.Chain.Skip(1), new ArcVertex(domain.End.X, domain.End.Y, 0)];
            for (int i = ends.Count - 1; i >= 0; i--)
            {
                Point2 at = Image(ends[i].Point);
                chain.Add(new ArcVertex(at.X, at.Y, domain.Chain[i].Turn));
            }
        }

        if (mirrors == EdgeMirrors.Both || (mirrors == EdgeMirrors.None && halfTurn))
        {
            chain.AddRange([.. chain.Select(v => new ArcVertex(-v.X, -v.Y, v.Turn))]);
        }

        return Joined(chain);
    }

    private static List<ArcVertex> Joined(List<ArcVertex> chain)
    {
        for (int i = 0; i < chain.Count && chain.Count > 2; i++)
        {
            int next = (i + 1) % chain.Count;
            int after = (i + 2) % chain.Count;
            EdgePiece a = EdgePiece.Of(chain[i], chain[next].Point);
            EdgePiece b = EdgePiece.Of(chain[next], chain[after].Point);
            bool straight = a.Turn == 0
                && b.Turn == 0
                && Math.Abs(a.Direction(0).Cross(b.End - b.Start)) < OneArc
                && a.Direction(0).Dot(b.Direction(0)) > 0;
            bool arc = a.Turn * b.Turn > 0
                && (a.Centre - b.Centre).Length < OneArc
                && Math.Abs(a.RadiusMm - b.RadiusMm) < OneArc
                && Math.Abs(a.Turn + b.Turn) < 1.9 * Math.PI;
            if (straight || arc)
            {
                chain[i] = chain[i] with { Turn = a.Turn + b.Turn };
                chain.RemoveAt(next);
                i = Math.Max(-1, i - 2);
            }
        }

        return chain;
    }

    private static double Tightest(SourceChain source)
    {
        int best = Enumerable.Range(0, source.Pieces.Count).MinBy(i => source.Pieces[i].RadiusMm);
        return source.Joints[best] + (source.Pieces[best].LengthMm / 2);
    }

    private static double Crossing(SourceChain source, Func<Point2, double> off, Func<Point2, bool> side)
    {
        const int parts = 4096;
        double? other = null;
        for (int i = 0; i < parts; i++)
        {
            double low = source.Length * i / parts;
            double high = source.Length * (i + 1) / parts;
            if (off(source.At(low)) > 0 == off(source.At(high)) > 0)
            {
                continue;
            }

            bool preferred = side(source.At(low));
            bool sign = off(source.At(low)) > 0;
            for (int k = 0; k < 60; k++)
            {
                double middle = (low + high) / 2;
                (low, high) = off(source.At(middle)) > 0 == sign ? (middle, high) : (low, middle);
            }

            // A joint or corner that stands there is meant.
            double at = (low + high) / 2;
            double found =
                source.Joints.FirstOrDefault(j => Math.Abs(Math.IEEERemainder(j - at, source.Length)) < 1e-7 * source.Length, at);
            if (preferred)
            {
                return found;
            }

            other ??= found;
        }

        return other ?? throw new GeometryException("outline does not cross the mirror it was found to have", source.Vertices[0].Point);
    }
}
