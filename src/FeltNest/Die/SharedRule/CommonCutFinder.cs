using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Die.Gang;
using FeltNest.Geometry;

namespace FeltNest.Die.SharedRule;

/// <summary>Finds the cuts that neighbouring cavities of a gang share.</summary>
internal static class CommonCutFinder
{
    // Ends of runs this near are one place, mm: four times what two edges may lie apart and still be one cut.
    private const double NodeSlackMm = 4 * SharedEdges.SlackMm;

    /// <summary>The common cuts of cavities.</summary>
    public static CommonCuts Of(IReadOnlyList<DieCavity> cavities, IReadOnlyList<DieEdge?> edges, DieWork work)
    {
        EdgeWalk[] walks = [.. cavities.Select(c => EdgeWalk.Placed(edges[c.Placed.Part]!, c))];
        List<(int Cavity, int Other, double From, double To)> shared = SharedEdges.Find(walks, work);
        PlaceGrid<(int Number, Point2 Place)> nodes = new(NodeSlackMm);
        int made = 0;
        List<RuleRun> runs = [];
        foreach (IGrouping<int, (int Cavity, int Other, double From, double To)> of in shared.GroupBy(s => s.Cavity).OrderBy(g => g.Key))
        {
            (int Cavity, int Other, double From, double To)[] along = [.. of.OrderBy(s => s.From)];
            for (int i = 0; i < along.Length; i++)
            {
                EdgeWalk walk = walks[of.Key];
                double end = along[i].To;
                double next = i + 1 < along.Length ? along[i + 1].From : along[0].From + walk.Length;
                Point2[] ends =
                [
                    Node(nodes, walk, along[i].From, ref made), Node(nodes, walk, end, ref made), Node(nodes, walk, next, ref made),
                ];
                if (of.Key < along[i].Other)
                {
                    runs.Add(Run(walk, of.Key, along[i].Other, along[i].From, end, ends[0], ends[1]));
                }

                if (next - end > NodeSlackMm)
                {
                    runs.Add(Run(walk, of.Key, null, end, next, ends[1], ends[2]));
                }
            }
        }

        return new CommonCuts(runs);
    }

    private static RuleRun Run(EdgeWalk walk, int cavity, int? other, double from, double to, Point2 start, Point2 end)
    {
        ArcVertex[] line =
        [
            .. walk
                .Between(from, to)
                .Select(p => walk.Pieces[p.Piece].Part(p.First, p.Last))
                .Select(p => new ArcVertex(p.Start.X, p.Start.Y, p.Turn)), new ArcVertex(end.X, end.Y, 0),
        ];
        line[0] = new ArcVertex(start.X, start.Y, line[0].Turn);
        return new RuleRun { Cavity = cavity, Other = other, FromMm = from, ToMm = to, Line = line };
    }

    // The place of a run's end: one that is there already where it is as good as the same.
    private static Point2 Node(PlaceGrid<(int Number, Point2 Place)> nodes, EdgeWalk walk, double along, ref int made)
    {
        (int piece, double first, _) = walk.Between(along % walk.Length, (along % walk.Length) + 1e-6).First();
        Point2 at = walk.Pieces[piece].At(first);
        foreach ((_, Point2 known) in nodes.Near(at, NodeSlackMm).Where(n => (n.Place - at).Length < NodeSlackMm).OrderBy(n => n.Number))
        {
            return known;
        }

        nodes.Add(at, (made++, at));
        return at;
    }
}
