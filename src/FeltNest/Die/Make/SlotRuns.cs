using FeltNest.Die.Edge;
using FeltNest.Die.Order;
using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Middle line of the slot of one cavity in runs: slots, and the bridges between them.</summary>
internal static class SlotRuns
{
    /// <summary>The runs in the part's frame.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="places">Where the bridges stand.</param>
    /// <param name="board">Length of a bridge.</param>
    /// <param name="outsideMm">How far outside the edge the rule's middle stands, mm.</param>
    /// <param name="own">Stretches of the edge that are this cavity's to draw, mm along, or null for all of it: a common cut is the earlier
    /// cavity's.</param>
    public static IEnumerable<(IReadOnlyList<ArcVertex> Run, bool Bridge)> Of(
        DieEdge edge, RulePlaces places, DieBoard board, double outsideMm, IReadOnlyList<(double From, double To)>? own) =>
        Stretches(edge, places, board, outsideMm, own).SelectMany(s => s.Runs.Select(run => (run, s.Bridge)));

    /// <summary>The same from bridge to bridge: runs of one stretch meet at corners.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="places">Where the bridges stand.</param>
    /// <param name="board">Length of a bridge.</param>
    /// <param name="outsideMm">How far outside the edge the rule's middle stands, mm.</param>
    /// <param name="own">Stretches of the edge that are this cavity's to draw, mm along, or null for all of it.</param>
    public static IEnumerable<(IReadOnlyList<IReadOnlyList<ArcVertex>> Runs, bool Bridge)> Stretches(
        DieEdge edge, RulePlaces places, DieBoard board, double outsideMm, IReadOnlyList<(double From, double To)>? own)
    {
        EdgeWalk walk = new(edge.Pieces);
        double total = walk.Length;
        double[] middles = [.. places.Bridges.Select(b => walk.Along(b.Place)).Order()];
        for (int b = 0; b < middles.Length; b++)
        {
            double from = middles[b] - (board.BridgeMm / 2);
            double to = middles[b] + (board.BridgeMm / 2);
            double next = (b + 1 < middles.Length ? middles[b + 1] : middles[0] + total) - (board.BridgeMm / 2);
            foreach ((double begin, double end, bool bridge) in Within(from, to, total, own).Select(s => (s.From, s.To, true))
                .Concat(Within(to, next, total, own).Select(s => (s.From, s.To, false))))
            {
                yield return (Stretch(edge, walk, begin, end, outsideMm), bridge);
            }
        }
    }

    // What of a stretch is to be drawn.
    private static IEnumerable<(double From, double To)> Within(
        double from, double to, double total, IReadOnlyList<(double From, double To)>? own) => own is null
        ? [(from, to)]
        : own
            .SelectMany(o =>
                new[] { -total, 0, total }.Select(turn => (From: Math.Max(from, o.From + turn), To: Math.Min(to, o.To + turn))))
            .Where(s => s.To - s.From > 1e-6)
            .OrderBy(s => s.From);

    // Pieces of the stretch moved outwards; where the edge has a corner the slot is drawn in two runs.
    private static List<IReadOnlyList<ArcVertex>> Stretch(DieEdge edge, EdgeWalk walk, double from, double to, double outsideMm)
    {
        List<IReadOnlyList<ArcVertex>> runs = [];
        List<ArcVertex> run = [];
        foreach ((int i, double first, double last) in walk.Between(from, to))
        {
            if (run.Count > 0 && edge.Corners.Contains(i) && first == 0)
            {
                runs.Add(run);
                run = [];
            }

            EdgePiece piece = walk.Pieces[i];
            Point2 a = piece.At(first) - (piece.Direction(first).Left * outsideMm);
            Point2 b = piece.At(last) - (piece.Direction(last).Left * outsideMm);
            if (run.Count > 0)
            {
                run.RemoveAt(run.Count - 1);
            }

            run.AddRange([new ArcVertex(a.X, a.Y, piece.Turn * (last - first)), new ArcVertex(b.X, b.Y, 0)]);
        }

        if (run.Count > 0)
        {
            runs.Add(run);
        }

        return runs;
    }
}
