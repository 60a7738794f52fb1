using FeltNest.Die.Gang;
using FeltNest.Geometry;

namespace FeltNest.Die.Edge;

/// <summary>A closed edge by the length along it.</summary>
internal sealed class EdgeWalk
{
    // Stretches shorter than this are none, mm.
    private const double Least = 1e-9;

    private readonly double[] starts;

    /// <summary>The walk along pieces that join into a loop.</summary>
    public EdgeWalk(IReadOnlyList<EdgePiece> pieces)
    {
        Pieces = pieces;
        starts = new double[pieces.Count + 1];
        for (int i = 0; i < pieces.Count; i++)
        {
            starts[i + 1] = starts[i] + pieces[i].LengthMm;
        }
    }

    /// <summary>The edge of a cavity in the die's frame.</summary>
    public static EdgeWalk Placed(DieEdge edge, DieCavity cavity)
    {
        double angle = double.DegreesToRadians(cavity.Placed.AngleDeg);
        Point2 by = new(cavity.Placed.XMm, cavity.Placed.YMm);
        Point2[] corners = [.. edge.Arcs.Vertices.Select(v => v.Point.Turned(angle) + by)];
        return new EdgeWalk([
            .. edge.Arcs.Vertices.Select((v, i) =>
                EdgePiece.Of(new ArcVertex(corners[i].X, corners[i].Y, v.Turn), corners[(i + 1) % corners.Length])),
        ]);
    }

    /// <summary>The pieces.</summary>
    public IReadOnlyList<EdgePiece> Pieces { get; }

    /// <summary>Length of the loop, mm.</summary>
    public double Length => starts[^1];

    /// <summary>Length along the loop at a share of a piece, mm.</summary>
    public double Along(int piece, double share) => starts[piece] + (share * Pieces[piece].LengthMm);

    /// <summary>Length along the loop at its place nearest to another, mm.</summary>
    public double Along(Point2 place)
    {
        int at = Enumerable.Range(0, Pieces.Count).MinBy(i => Pieces[i].DistanceTo(place));
        return Along(at, Pieces[at].ShareAt(place));
    }

    /// <summary>The pieces from one length along to another further on, with the number of the whole piece each is of; either may lie
    /// outside the loop by up to its length.</summary>
    public IEnumerable<(int Piece, double First, double Last)> Between(double from, double to)
    {
        for (int n = -Pieces.Count; n < 2 * Pieces.Count; n++)
        {
            int i = ((n % Pieces.Count) + Pieces.Count) % Pieces.Count;
            double turn = Math.Floor((double)n / Pieces.Count) * Length;
            double begin = Math.Max(from, starts[i] + turn);
            double end = Math.Min(to, starts[i + 1] + turn);
            if (end - begin > Least)
            {
                yield return (i, (begin - starts[i] - turn) / Pieces[i].LengthMm, (end - starts[i] - turn) / Pieces[i].LengthMm);
            }
        }
    }
}
