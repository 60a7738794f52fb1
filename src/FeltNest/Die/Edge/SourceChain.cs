using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Die.Edge;

/// <summary>A part's outline as pieces by length, with its corners told apart from joints.</summary>
internal sealed class SourceChain
{
    // A joint that bends more than this is a corner of an outline given by arcs, radians: drawings round their coordinates, so less is no
    // will to have one.
    private const double ArcCorner = 1 * Math.PI / 180;

    private readonly EdgePiece[] pieces;
    private readonly double[] starts;

    private SourceChain(IReadOnlyList<ArcVertex> vertices, bool[] corners, double smoothedMm)
    {
        Vertices = vertices;
        pieces = [.. vertices.Select((v, i) => EdgePiece.Of(v, vertices[(i + 1) % vertices.Count].Point))];
        starts = new double[pieces.Length];
        for (int i = 1; i < pieces.Length; i++)
        {
            starts[i] = starts[i - 1] + pieces[i - 1].LengthMm;
        }

        Length = starts[^1] + pieces[^1].LengthMm;
        SmoothedMm = smoothedMm;
        Corners = [.. Enumerable.Range(0, pieces.Length).Where(i => corners[i]).Select(i => starts[i])];
    }

    /// <summary>Its vertices.</summary>
    public IReadOnlyList<ArcVertex> Vertices { get; }

    /// <summary>Length, mm.</summary>
    public double Length { get; }

    /// <summary>Places of corners, mm along.</summary>
    public IReadOnlyList<double> Corners { get; }

    /// <summary>Places of all joints, mm along.</summary>
    public IReadOnlyList<double> Joints => starts;

    /// <summary>How far a polygon was left when its small bends were smoothed, mm.</summary>
    public double SmoothedMm { get; }

    /// <summary>The pieces.</summary>
    public IReadOnlyList<EdgePiece> Pieces => pieces;

    /// <summary>The chain of an outline made of arcs.</summary>
    public static SourceChain Of(ArcOutline arcs)
    {
        EdgePiece[] all = [.. arcs.Vertices.Select((v, i) => EdgePiece.Of(v, arcs.Vertices[(i + 1) % arcs.Vertices.Count].Point))];
        return new SourceChain(arcs.Vertices, [.. all.Select((p, i) => Bend(all[(i + all.Length - 1) % all.Length], p) > ArcCorner)], 0);
    }

    /// <summary>The chain of a polygon: bends so slight that an arc through the corners stays within <paramref name="tolerance"/> mm of the
    /// sides are smoothed, the rest are corners.</summary>
    public static SourceChain Of(Outline outline, double tolerance)
    {
        IReadOnlyList<Point2> points = outline.Points;
        int count = points.Count;
        Point2 Side(int i) => points[(i + 1) % count] - points[(i + count) % count];
        bool[] corners = [.. Enumerable.Range(0, count).Select(i => Rise(Side(i - 1), Side(i)) > tolerance)];

        List<ArcVertex> chain = [];
        List<bool> bends = [];
        double worst = 0;
        for (int i = 0; i < count; i++)
        {
            Biarc pair = Biarc.Between(At(i, Side(i)), At((i + 1) % count, Side(i)));
            if (pair.First.Turn == 0 && pair.Second.Turn == 0)
            {
                chain.Add(new ArcVertex(points[i].X, points[i].Y, 0));
                bends.Add(corners[i]);
                continue;
            }

            chain.AddRange([pair.First, pair.Second]);
            bends.AddRange([corners[i], false]);
            Point2 unit = Side(i) * (1 / Side(i).Length);
            EdgePiece[] two = [EdgePiece.Of(pair.First, pair.Second.Point), EdgePiece.Of(pair.Second, points[(i + 1) % count])];
            worst = Math.Max(
                worst, two.Max(piece => new[] { 0.25, 0.5, 0.75, 1 }.Max(share => Math.Abs(unit.Cross(piece.At(share) - points[i])))));
        }

        return new SourceChain(chain, [.. bends], worst);

        // Corners keep the direction of the side; tangents at smoothed corners are those of the circle through it and its neighbours.
        CurvePoint At(int i, Point2 side) => new(points[i % count], corners[i % count] ? side : Between(Side(i - 1), Side(i)));
    }

    private static Point2 Between(Point2 before, Point2 after) =>
        (before * (after.Length / before.Length)) + (after * (before.Length / after.Length));

    // How far an arc through the corner would rise over the longer of its sides.
    private static double Rise(Point2 before, Point2 after)
    {
        double bend = Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after)));
        return Math.Max(before.Length, after.Length) * Math.Tan(bend / 4) / 2;
    }

    /// <summary>The stretch from one place to another further on, mm along, as a curve by length; beyond the end it goes on round the
    /// chain.</summary>
    public IPlaneCurve Stretch(double from, double to) => new Run(this, from, to - from);

    /// <summary>Place at a length from the start.</summary>
    public Point2 At(double along) => Find(along, false).Place;

    /// <summary>Length along to the point of the chain nearest to a place.</summary>
    public double Nearest(Point2 place)
    {
        int best = Enumerable.Range(0, pieces.Length).MinBy(i => pieces[i].DistanceTo(place));
        EdgePiece piece = pieces[best];
        Point2 start = piece.Start - piece.Centre;
        Point2 spoke = place - piece.Centre;
        double share = piece.Turn == 0
            ? (place - piece.Start).Dot(piece.End - piece.Start) / (piece.End - piece.Start).Dot(piece.End - piece.Start)
            : Math.Atan2(start.Cross(spoke), start.Dot(spoke)) / piece.Turn;
        return starts[best] + (Math.Clamp(share, 0, 1) * piece.LengthMm);
    }

    private static double Bend(EdgePiece before, EdgePiece after)
    {
        Point2 a = before.Direction(1);
        Point2 b = after.Direction(0);
        return Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b)));
    }

    // The place with the direction of the piece before or after it. Ends of stretches are sums of lengths, so a hair beside a joint is the
    // joint.
    private CurvePoint Find(double along, bool before)
    {
        double hair = 1e-9 * Length;
        double at = along - (Math.Floor(along / Length) * Length);
        if (before)
        {
            at = at <= hair ? Length : at;
        }
        else
        {
            at = at >= Length - hair ? 0 : at;
        }

        int index = Array.BinarySearch(starts, before ? at - hair : at + hair);
        index = Math.Max(0, index >= 0 ? index : ~index - 1);
        EdgePiece piece = pieces[index];
        double share = Math.Clamp((at - starts[index]) / piece.LengthMm, 0, 1);
        return new CurvePoint(piece.At(share), piece.Direction(share));
    }

    private sealed class Run(SourceChain chain, double from, double span) : IPlaneCurve
    {
        public double Period => chain.Length;

        public CurvePoint At(double parameter) => chain.Find(from + parameter, parameter >= span);
    }
}
