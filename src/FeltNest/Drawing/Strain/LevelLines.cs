using FeltNest.Geometry;

namespace FeltNest.Drawing.Strain;

/// <summary>Where a triangulated field has a value, as lines; values run straight along each edge.</summary>
internal static class LevelLines
{
    /// <summary>The lines of one level.</summary>
    /// <param name="nodes">Places of the nodes, mm.</param>
    /// <param name="values">Values at the nodes; none of them is the level itself.</param>
    /// <param name="triangles">Triangles.</param>
    /// <param name="level">The level.</param>
    public static IReadOnlyList<Chain> Of(
        IReadOnlyList<Point2> nodes, IReadOnlyList<double> values, IReadOnlyList<(int A, int B, int C)> triangles, double level)
    {
        // Each triangle that the level crosses joins two of its edges; each edge has at most two neighbours.
        Dictionary<(int, int), List<(int, int)>> joined = [];
        foreach ((int a, int b, int c) in triangles)
        {
            (int, int)[] crossed = [.. new[] { (a, b), (b, c), (c, a) }.Where(e => values[e.Item1] < level != values[e.Item2] < level)];
            if (crossed is [var first, var second])
            {
                Join(joined, Key(first), Key(second));
                Join(joined, Key(second), Key(first));
            }
        }

        HashSet<(int, int)> seen = [];
        return
        [
            .. joined.Keys.OrderBy(edge => joined[edge].Count).ThenBy(edge => edge).Where(seen.Add)
                .Select(start => Chain.Open([.. Walk(joined, seen, start).Select(edge => Crossing(nodes, values, edge, level))])),
        ];
    }

    private static void Join(Dictionary<(int, int), List<(int, int)>> joined, (int, int) from, (int, int) to)
    {
        if (!joined.TryGetValue(from, out List<(int, int)>? neighbours))
        {
            joined.Add(from, neighbours = []);
        }

        neighbours.Add(to);
    }

    private static IEnumerable<(int, int)> Walk(
        Dictionary<(int, int), List<(int, int)>> joined, HashSet<(int, int)> seen, (int, int) start)
    {
        (int, int)? at = start;
        while (at is { } edge)
        {
            yield return edge;
            (int, int)[] next = [.. joined[edge].Where(seen.Add).Take(1)];
            at = next.Length == 0 ? null : next[0];
        }
    }

    private static (int, int) Key((int A, int B) edge) => (Math.Min(edge.A, edge.B), Math.Max(edge.A, edge.B));

    private static Point2 Crossing(IReadOnlyList<Point2> nodes, IReadOnlyList<double> values, (int I, int J) edge, double level) =>
        nodes[edge.I] + ((nodes[edge.J] - nodes[edge.I]) * ((level - values[edge.I]) / (values[edge.J] - values[edge.I])));
}
