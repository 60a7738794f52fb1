using FeltNest.Geometry;

namespace FeltNest.Drawing.Strain;

/// <summary>The region of a triangulated field where the value is at least a level, as closed rings; values run straight along each
/// edge.</summary>
internal static class LevelRegion
{
    /// <summary>Rings of the region (its holes among them); empty where the value is nowhere as high.</summary>
    /// <param name="nodes">Places of the nodes, mm.</param>
    /// <param name="values">Values at the nodes.</param>
    /// <param name="triangles">Triangles, all turning the same way.</param>
    /// <param name="level">The level.</param>
    public static IReadOnlyList<Chain> Rings(
        IReadOnlyList<Point2> nodes, IReadOnlyList<double> values, IReadOnlyList<(int A, int B, int C)> triangles, double level)
    {
        // Corners of the cut triangles: a node is (i, i), a crossing on an edge (i, j) with i
        // < j. Sides that two triangles share cancel; the rest bounds the region.
        HashSet<((int, int) From, (int, int) To)> sides = [];
        List<(int, int)> cut = [];
        foreach ((int a, int b, int c) in triangles)
        {
            cut.Clear();
            Clip(a, b);
            Clip(b, c);
            Clip(c, a);
            for (int i = 0; i < cut.Count; i++)
            {
                AddSide(sides, cut[i], cut[(i + 1) % cut.Count]);
            }
        }

        return Chained(sides, corner => PlaceOf(nodes, values, corner, level));

        void Clip(int from, int to)
        {
            bool inside = values[from] >= level;
            if (inside)
            {
                cut.Add((from, from));
            }

            if (inside != (values[to] >= level))
            {
                cut.Add((Math.Min(from, to), Math.Max(from, to)));
            }
        }
    }

    private static void AddSide(HashSet<((int, int) From, (int, int) To)> sides, (int, int) from, (int, int) to)
    {
        if (!sides.Remove((to, from)))
        {
            sides.Add((from, to));
        }
    }

    private static List<Chain> Chained(IEnumerable<((int, int) From, (int, int) To)> sides, Func<(int, int), Point2> place)
    {
        Dictionary<(int, int), Queue<(int, int)>> next = [];
        foreach (((int, int) from, (int, int) to) in sides.Order())
        {
            if (!next.TryGetValue(from, out Queue<(int, int)>? ends))
            {
                next.Add(from, ends = new());
            }

            ends.Enqueue(to);
        }

        List<Chain> rings = [];
        foreach ((int, int) start in next.Keys.Order().ToArray())
        {
            while (next[start].TryDequeue(out (int, int) at))
            {
                List<Point2> ring = [place(start)];
                while (at != start)
                {
                    ring.Add(place(at));
                    at = next[at].Dequeue();
                }

                rings.Add(Chain.Ring(ring));
            }
        }

        return rings;
    }

    private static Point2 PlaceOf(IReadOnlyList<Point2> nodes, IReadOnlyList<double> values, (int I, int J) corner, double level)
    {
        (int i, int j) = corner;
        return i == j ? nodes[i] : nodes[i] + ((nodes[j] - nodes[i]) * ((level - values[i]) / (values[j] - values[i])));
    }
}
