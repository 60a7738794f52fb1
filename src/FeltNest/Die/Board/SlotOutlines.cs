using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Geometry;

namespace FeltNest.Die.Board;

/// <summary>Closed outlines of the slots of a board, kerf taken off.</summary>
/// <remarks>A smooth slot keeps its arcs. Slots with a corner, or cut through by a split of the board, are chords within 2 micrometres of
/// them: corners go on to the mitre, and a slot runs out over a split.</remarks>
internal sealed class SlotOutlines
{
    private const double Chord = 0.002;

    // How far a slot runs out over a split, mm.
    private const double Over = 1;

    private readonly DieDesign design;
    private readonly double kerf;
    private readonly double half;

    /// <summary>Outlines for a slot of a width, mm, and a kerf, mm.</summary>
    public SlotOutlines(DieDesign design, double slotMm, double kerfMm) =>
        (this.design, kerf, half) = (design, kerfMm, (slotMm - kerfMm) / 2);

    /// <summary>The outlines as drawn, each with the piece of the board that it is in.</summary>
    /// <param name="splits">Where the board is split, ascending, mm.</param>
    /// <param name="alongX">Whether these are places along x.</param>
    public IEnumerable<(int Piece, IReadOnlyList<ArcVertex> Line)> Of(IReadOnlyList<double> splits, bool alongX)
    {
        foreach (IReadOnlyList<ArcVertex>[] runs in Stretches())
        {
            double Along(Point2 p) => alongX ? p.X : p.Y;
            int Piece(Point2 p) => splits.Count(s => Along(p) > s);
            bool crossed = runs.SelectMany(r => Points(r)).Select(Piece).Distinct().Count() > 1;
            if (runs.Length == 1 && !crossed)
            {
                yield return (Piece(runs[0][0].Point), Smooth(runs[0]));
                continue;
            }

            foreach (List<Point2> line in Divided(Retracted(Joined(runs)), splits, alongX))
            {
                Point2 middle = line[line.Count / 2];
                yield return (
                    line.Count > 2 ? Piece(middle) : Piece((line[0] + line[1]) * 0.5),
                    [.. PolygonSets.Band(line, half).Select(p => new ArcVertex(p.X, p.Y, 0))]);
            }
        }
    }

    private IEnumerable<IReadOnlyList<ArcVertex>[]> Stretches()
    {
        DieOrder order = design.Request.Order;
        foreach ((int i, DieCavity cavity) in design.Gang.Cavities.Index())
        {
            (double, double)[]? own =
                design.Gang.Common.Has(i) ? [.. design.Gang.Common.Of(i).Where(r => r.Cavity == i).Select(r => (r.FromMm, r.ToMm))] : null;
            foreach ((IReadOnlyList<IReadOnlyList<ArcVertex>> runs, bool bridge) in SlotRuns.Stretches(
                design.Edges[cavity.Placed.Part]!, design.Places[cavity.Placed.Part]!, order.Board, order.Rule.MiddleInWasteMm, own))
            {
                if (!bridge && runs.Count > 0)
                {
                    yield return [.. runs.Select(r => Seen(cavity, r))];
                }
            }
        }
    }

    // From the die's side left and right change places, and arcs turn the other way.
    private IReadOnlyList<ArcVertex> Seen(DieCavity cavity, IReadOnlyList<ArcVertex> run) => [.. run.Select(v =>
    {
        Point2 p = v.Point.Turned(double.DegreesToRadians(cavity.Placed.AngleDeg)) + new Point2(cavity.Placed.XMm, cavity.Placed.YMm);
        return design.Request.Order.DieView
            ? new ArcVertex(design.Gang.BoardLengthMm - p.X, p.Y, -v.Turn)
            : new ArcVertex(p.X, p.Y, v.Turn);
    })];

    private List<ArcVertex> Smooth(IReadOnlyList<ArcVertex> run)
    {
        List<EdgePiece> pieces = [.. Enumerable.Range(0, run.Count - 1).Select(i => EdgePiece.Of(run[i], run[i + 1].Point))];
        pieces[0] = pieces[0].Part(Short(pieces[0]), 1);
        pieces[^1] = pieces[^1].Part(0, 1 - Short(pieces[^1]));
        List<ArcVertex> line = [];
        foreach (EdgePiece piece in pieces)
        {
            line.Add(Beside(piece, 0, -half, piece.Turn));
        }

        line.Add(Beside(pieces[^1], 1, -half, 0));
        foreach (EdgePiece piece in Enumerable.Reverse(pieces))
        {
            line.Add(Beside(piece, 1, half, -piece.Turn));
        }

        line.Add(Beside(pieces[0], 0, half, 0));
        return line;
    }

    // The beam burns half its width off the bridge beyond the line.
    private double Short(EdgePiece piece) => Math.Min(0.4, kerf / 2 / piece.LengthMm);

    private static ArcVertex Beside(EdgePiece piece, double share, double left, double turn)
    {
        Point2 at = piece.At(share) + (piece.Direction(share).Left * left);
        return new ArcVertex(at.X, at.Y, turn);
    }

    private static List<Point2> Points(IReadOnlyList<ArcVertex> run)
    {
        List<Point2> points = [run[0].Point];
        for (int i = 0; i + 1 < run.Count; i++)
        {
            EdgePiece piece = EdgePiece.Of(run[i], run[i + 1].Point);
            double step = piece.Turn == 0 ? double.PositiveInfinity : 2 * Math.Acos(Math.Max(0, 1 - (Chord / piece.RadiusMm)));
            int count = piece.Turn == 0 ? 1 : Math.Max(1, (int)Math.Ceiling(Math.Abs(piece.Turn) / step));
            points.AddRange(Enumerable.Range(1, count).Select(k => piece.At((double)k / count)));
        }

        return points;
    }

    // Runs that end at corners, joined where their lines meet.
    private static List<Point2> Joined(IReadOnlyList<ArcVertex>[] runs)
    {
        List<Point2> line = Points(runs[0]);
        foreach (IReadOnlyList<ArcVertex> run in runs.Skip(1))
        {
            List<Point2> next = Points(run);
            Point2 a = line[^1] - line[^2];
            Point2 b = next[1] - next[0];
            double cross = a.Cross(b);
            if (Math.Abs(cross) > 1e-9 * a.Length * b.Length)
            {
                Point2 mitre = line[^1] + (a * ((next[0] - line[^1]).Cross(b) / cross));
                line.RemoveAll(p => (p - mitre).Dot(a) > 0 && (p - mitre).Length < 10);
                next.RemoveAll(p => (p - mitre).Dot(b) < 0 && (p - mitre).Length < 10);
                line.Add(mitre);
            }

            line.AddRange(next.Where(p => (p - line[^1]).Length > 1e-6));
        }

        return line;
    }

    private List<Point2> Retracted(List<Point2> line)
    {
        line[0] += (line[1] - line[0]) * Math.Min(0.4, kerf / 2 / (line[1] - line[0]).Length);
        line[^1] += (line[^2] - line[^1]) * Math.Min(0.4, kerf / 2 / (line[^2] - line[^1]).Length);
        return line;
    }

    private static List<List<Point2>> Divided(List<Point2> line, IReadOnlyList<double> splits, bool alongX)
    {
        double Along(Point2 p) => alongX ? p.X : p.Y;
        List<List<Point2>> parts = [[line[0]]];
        for (int i = 0; i + 1 < line.Count; i++)
        {
            (Point2 a, Point2 b) = (line[i], line[i + 1]);
            double[] at =
            [
                .. splits.Select(s => (s - Along(a)) / (Along(b) - Along(a))).Where(t => t is > 0 and < 1).Order(),
            ];
            foreach (double t in at)
            {
                Point2 on = a + ((b - a) * t);
                Point2 over = (b - a) * (Over / (b - a).Length);
                parts[^1].Add(on + over);
                parts.Add([on - over]);
            }

            parts[^1].Add(b);
        }

        return parts;
    }
}
