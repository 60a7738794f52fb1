using FeltNest.Die.Edge;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Geometry;

namespace FeltNest.Files.Dies;

/// <summary>Middle line of the slot of one cavity in runs: slots, and the bridges between them.</summary>
internal static class SlotRuns
{
    /// <summary>The runs in the part's frame.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="places">Where the bridges stand.</param>
    /// <param name="board">Length of a bridge.</param>
    /// <param name="outsideMm">How far outside the edge the rule's middle stands, mm.</param>
    public static IEnumerable<(IReadOnlyList<ArcVertex> Run, bool Bridge)> Of(DieEdge edge, RulePlaces places, DieBoard board, double outsideMm)
    {
        IReadOnlyList<EdgePiece> pieces = edge.Pieces;
        double[] starts = new double[pieces.Count + 1];
        for (int i = 0; i < pieces.Count; i++)
        {
            starts[i + 1] = starts[i] + pieces[i].LengthMm;
        }

        double total = starts[^1];
        double[] middles = [.. places.Bridges.Select(b => Along(pieces, starts, b.Place)).Order()];
        for (int b = 0; b < middles.Length; b++)
        {
            double from = middles[b] - (board.BridgeMm / 2), to = middles[b] + (board.BridgeMm / 2), next = (b + 1 < middles.Length ? middles[b + 1] : middles[0] + total) - (board.BridgeMm / 2);
            foreach (IReadOnlyList<ArcVertex> run in Stretch(edge, starts, from, to, outsideMm))
            {
                yield return (run, true);
            }

            foreach (IReadOnlyList<ArcVertex> run in Stretch(edge, starts, to, next, outsideMm))
            {
                yield return (run, false);
            }
        }
    }

    private static double Along(IReadOnlyList<EdgePiece> pieces, double[] starts, Point2 place)
    {
        int at = Enumerable.Range(0, pieces.Count).MinBy(i => pieces[i].DistanceTo(place));
        EdgePiece piece = pieces[at];
        Point2 start = piece.Start - piece.Centre, spoke = place - piece.Centre;
        double share = piece.Turn == 0 ? (place - piece.Start).Length / piece.LengthMm : Math.Atan2(start.Cross(spoke), start.Dot(spoke)) / piece.Turn;
        return starts[at] + (share * piece.LengthMm);
    }

    // Pieces of the stretch moved outwards; where the edge has a corner the slot is drawn in two runs.
    private static List<IReadOnlyList<ArcVertex>> Stretch(DieEdge edge, double[] starts, double from, double to, double outsideMm)
    {
        IReadOnlyList<EdgePiece> pieces = edge.Pieces;
        double total = starts[^1];
        List<IReadOnlyList<ArcVertex>> runs = [];
        List<ArcVertex> run = [];
        for (int n = -pieces.Count; n < 2 * pieces.Count; n++)
        {
            int i = ((n % pieces.Count) + pieces.Count) % pieces.Count;
            double turn = Math.Floor((double)n / pieces.Count) * total, begin = Math.Max(from, starts[i] + turn), end = Math.Min(to, starts[i + 1] + turn);
            if (end - begin <= 1e-9)
            {
                continue;
            }

            if (run.Count > 0 && edge.Corners.Contains(i) && begin > from)
            {
                runs.Add(run);
                run = [];
            }

            EdgePiece piece = pieces[i];
            double first = (begin - starts[i] - turn) / piece.LengthMm, last = (end - starts[i] - turn) / piece.LengthMm;
            Point2 a = piece.At(first) - (piece.Direction(first).Left * outsideMm), b = piece.At(last) - (piece.Direction(last).Left * outsideMm);
            if (run.Count > 0)
            {
                run.RemoveAt(run.Count - 1);
            }

            run.AddRange([new ArcVertex(a.X, a.Y, piece.Turn * (last - first)), new ArcVertex(b.X, b.Y, 0)]);
        }

        runs.Add(run);
        return runs;
    }
}
