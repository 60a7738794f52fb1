using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Geometry;

namespace FeltNest.Die.SharedRule;

/// <summary>Finds where edges of two cavities are the same line.</summary>
internal static class SharedEdges
{
    /// <summary>Edges no further apart than this are one cut, mm: a fortieth of what an edge may lie off the true outline.</summary>
    public const double SlackMm = 5e-4;

    /// <summary>Shorter shared runs are touching places, no cuts, mm.</summary>
    public const double LeastMm = 0.02;

    // Shares between the ends of an overlap that are looked at.
    private static readonly double[] Looks = [0.25, 0.5, 0.75];

    /// <summary>Stretches that two edges share, each told twice: along either edge, mm. A stretch that passes an edge's start ends beyond
    /// its length.</summary>
    public static List<(int Cavity, int Other, double From, double To)> Find(IReadOnlyList<EdgeWalk> walks, DieWork work)
    {
        (double MinX, double MinY, double MaxX, double MaxY)[][] boxes = [.. walks.Select(w => w.Pieces.Select(Reach).ToArray())];
        (double MinX, double MinY, double MaxX, double MaxY)[] whole =
        [
            .. boxes.Select(b => (b.Min(x => x.MinX), b.Min(x => x.MinY), b.Max(x => x.MaxX), b.Max(x => x.MaxY))),
        ];
        double wide = whole.Select(b => b.MaxX - b.MinX).DefaultIfEmpty(1).Max() + (2 * SlackMm);
        double high = whole.Select(b => b.MaxY - b.MinY).DefaultIfEmpty(1).Max() + (2 * SlackMm);
        PlaceGrid<int> byLow = new(Math.Max(wide, high));
        for (int i = 0; i < walks.Count; i++)
        {
            byLow.Add(new Point2(whole[i].MinX, whole[i].MinY), i);
        }

        List<(int, int, double, double)> found = [];
        for (int i = 0; i < walks.Count; i++)
        {
            foreach (int k in byLow
                .Within(
                    new Point2(whole[i].MinX - wide, whole[i].MinY - high), new Point2(whole[i].MaxX + SlackMm, whole[i].MaxY + SlackMm))
                .Where(k => k > i && Near(whole[i], whole[k]))
                .Order())
            {
                work.Look();
                (List<(double From, double To)> mine, List<(double From, double To)> theirs) =
                    Stretches(walks[i], boxes[i], walks[k], boxes[k]);
                found.AddRange(Joined(mine, walks[i].Length).Select(s => (i, k, s.From, s.To)));
                found.AddRange(Joined(theirs, walks[k].Length).Select(s => (k, i, s.From, s.To)));
            }
        }

        return found;
    }

    // Stretches that two edges share, piece by piece, along either.
    private static (List<(double From, double To)> Mine, List<(double From, double To)> Theirs) Stretches(
        EdgeWalk one, (double MinX, double MinY, double MaxX, double MaxY)[] ownBoxes,
        EdgeWalk other, (double MinX, double MinY, double MaxX, double MaxY)[] otherBoxes)
    {
        List<(double From, double To)> mine = [];
        List<(double From, double To)> theirs = [];
        for (int a = 0; a < ownBoxes.Length; a++)
        {
            for (int b = 0; b < otherBoxes.Length; b++)
            {
                if (Near(ownBoxes[a], otherBoxes[b]) && Overlap(one.Pieces[a], other.Pieces[b]) is { } shares)
                {
                    mine.Add((one.Along(a, shares.First), one.Along(a, shares.Last)));
                    double[] ends =
                    [
                        .. new[] { shares.First, shares.Last }
                            .Select(s => other.Along(b, other.Pieces[b].ShareAt(one.Pieces[a].At(s))))
                            .Order(),
                    ];
                    theirs.Add((ends[0], ends[1]));
                }
            }
        }

        return (mine, theirs);
    }

    // Shares of the first piece between which it is the second one's line: ends of either that lie on the other, and the way between them.
    private static (double First, double Last)? Overlap(EdgePiece one, EdgePiece two)
    {
        List<double> met =
        [
            .. new[] { two.Start, two.End }.Where(p => one.DistanceTo(p) < SlackMm).Select(one.ShareAt),
            .. new[] { one.Start, one.End }.Where(p => two.DistanceTo(p) < SlackMm).Select(one.ShareAt),
        ];
        if (met.Count < 2 || (met.Max() - met.Min()) * one.LengthMm < SlackMm)
        {
            return null;
        }

        (double first, double last) = (met.Min(), met.Max());
        return Looks.All(s => two.DistanceTo(one.At(first + (s * (last - first)))) < SlackMm) ? (first, last) : null;
    }

    // Stretches that follow each other are one; what is too short in the end is no cut.
    private static IEnumerable<(double From, double To)> Joined(List<(double From, double To)> stretches, double length)
    {
        List<(double From, double To)> joined = [];
        foreach ((double from, double to) in stretches.OrderBy(s => s.From))
        {
            if (joined.Count > 0 && from - joined[^1].To < 4 * SlackMm)
            {
                joined[^1] = (joined[^1].From, Math.Max(to, joined[^1].To));
            }
            else
            {
                joined.Add((from, to));
            }
        }

        if (joined.Count > 1 && joined[0].From + length - joined[^1].To < 4 * SlackMm)
        {
            joined[^1] = (joined[^1].From, joined[0].To + length);
            joined.RemoveAt(0);
        }

        return joined.Where(s => s.To - s.From > LeastMm);
    }

    private static (double MinX, double MinY, double MaxX, double MaxY) Reach(EdgePiece piece)
    {
        // An arc stays within its rise of the chord's box.
        double rise = piece.Turn == 0 ? 0 : piece.RadiusMm * (1 - Math.Cos(Math.Min(Math.PI, Math.Abs(piece.Turn) / 2)));
        (Point2 a, Point2 b) = (piece.Start, piece.End);
        return (Math.Min(a.X, b.X) - rise, Math.Min(a.Y, b.Y) - rise, Math.Max(a.X, b.X) + rise, Math.Max(a.Y, b.Y) + rise);
    }

    private static bool Near(
        (double MinX, double MinY, double MaxX, double MaxY) a, (double MinX, double MinY, double MaxX, double MaxY) b) =>
        a.MinX - SlackMm <= b.MaxX && b.MinX - SlackMm <= a.MaxX && a.MinY - SlackMm <= b.MaxY && b.MinY - SlackMm <= a.MaxY;
}
