namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>The faces of an arrangement with their winding numbers. Half-edge 2e runs along edge e from A to B, 2e + 1 back.</summary>
internal sealed class CurveFaces
{
    private readonly CurveArrangement curves;
    private readonly int[] starts;
    private readonly int[] spokes;
    private readonly int[] next;
    private readonly int[] face;
    private int[] winding = [];

    internal CurveFaces(CurveArrangement curves)
    {
        this.curves = curves;
        int count = 2 * curves.Edges.Length;
        starts = new int[curves.Places.Count + 1];
        foreach (CurveEdge edge in curves.Edges)
        {
            starts[edge.A + 1]++;
            starts[edge.B + 1]++;
        }

        for (int i = 0; i < curves.Places.Count; i++)
        {
            starts[i + 1] += starts[i];
        }

        spokes = new int[count];
        next = new int[count];
        Link();
        face = new int[count];
        Array.Fill(face, -1);
        Trace();
    }

    // Spokes round each place in order, and from them the half-edge that follows each.
    private void Link()
    {
        int[] filled = [.. starts];
        double[] angles = new double[spokes.Length];
        for (int h = 0; h < spokes.Length; h++)
        {
            Point2 along = curves.Places[To(h)] - curves.Places[From(h)];
            int at = filled[From(h)]++;
            (spokes[at], angles[at]) = (h, Math.Atan2(along.Y, along.X));
        }

        for (int v = 0; v < curves.Places.Count; v++)
        {
            int degree = starts[v + 1] - starts[v];
            Array.Sort(angles, spokes, starts[v], degree);
            for (int k = 0; k < degree; k++)
            {
                // Arriving by the reverse of a spoke, the face on the left goes on by the spoke clockwise of it.
                next[spokes[starts[v] + k] ^ 1] = spokes[starts[v] + ((k + degree - 1) % degree)];
            }
        }
    }

    /// <summary>Count of half-edges.</summary>
    internal int HalfEdges => next.Length;

    /// <summary>Place at which a half-edge starts.</summary>
    internal int From(int h) => (h & 1) == 0 ? curves.Edges[h >> 1].A : curves.Edges[h >> 1].B;

    /// <summary>Place at which it ends.</summary>
    internal int To(int h) => From(h ^ 1);

    /// <summary>Winding number on the left of a half-edge.</summary>
    internal int Left(int h) => winding[face[h]];

    /// <summary>The half-edge after it round the face on its left.</summary>
    internal int Next(int h) => next[h];

    /// <summary>Half-edges that start at a place, counter-clockwise.</summary>
    internal ReadOnlySpan<int> Spokes(int place) => spokes.AsSpan(starts[place], starts[place + 1] - starts[place]);

    private void Trace()
    {
        int faces = 0;
        for (int h = 0; h < next.Length; h++)
        {
            if (face[h] < 0)
            {
                for (int k = h; face[k] < 0; k = next[k])
                {
                    face[k] = faces;
                }

                faces++;
            }
        }

        winding = new int[faces];
        bool[] known = new bool[faces];
        int[] group = Groups(out List<int> leftmost);
        int[] faceStarts = new int[faces];
        for (int h = 0; h < next.Length; h++)
        {
            faceStarts[face[h]] = h;
        }

        for (int g = 0; g < leftmost.Count; g++)
        {
            // From the leftmost place the open side lies beyond the last spoke counter-clockwise.
            int outer = face[Spokes(leftmost[g])[^1]];
            (winding[outer], known[outer]) = (leftmost.Count == 1 ? 0 : Around(leftmost[g], g, group), true);
            Spread(outer, faceStarts, known);
        }
    }

    // From face to face over the edges between them, each of which changes the winding number by its rise.
    private void Spread(int outer, int[] faceStarts, bool[] known)
    {
        Stack<int> open = new([outer]);
        while (open.TryPop(out int f))
        {
            int h = faceStarts[f];
            do
            {
                int other = face[h ^ 1];
                if (!known[other])
                {
                    int rise = curves.Edges[h >> 1].Rise;
                    (winding[other], known[other]) = (winding[f] - ((h & 1) == 0 ? rise : -rise), true);
                    open.Push(other);
                }

                h = next[h];
            }
            while (h != faceStarts[f]);
        }
    }

    // Number of the connected group of each place (-1 where no edge ends), and the leftmost, then lowest, place of each group.
    private int[] Groups(out List<int> leftmost)
    {
        int[] group = new int[curves.Places.Count];
        Array.Fill(group, -1);
        leftmost = [];
        Stack<int> open = [];
        for (int v = 0; v < group.Length; v++)
        {
            if (group[v] >= 0 || starts[v] == starts[v + 1])
            {
                continue;
            }

            int low = v;
            group[v] = leftmost.Count;
            open.Push(v);
            while (open.TryPop(out int at))
            {
                Point2 p = curves.Places[at];
                Point2 q = curves.Places[low];
                low = p.X < q.X || (p.X == q.X && p.Y < q.Y) ? at : low;
                foreach (int h in Spokes(at))
                {
                    if (group[To(h)] < 0)
                    {
                        group[To(h)] = leftmost.Count;
                        open.Push(To(h));
                    }
                }
            }

            leftmost.Add(low);
        }

        return group;
    }

    // Winding number of the other groups' curves at a place: a ray to the left, upward pieces on it take one off.
    private int Around(int place, int own, int[] group)
    {
        Point2 p = curves.Places[place];
        int sum = 0;
        foreach (CurveEdge edge in curves.Edges)
        {
            Point2 a = curves.Places[edge.A];
            Point2 b = curves.Places[edge.B];
            if (group[edge.A] != own && a.Y > p.Y != b.Y > p.Y && a.X + ((b.X - a.X) * ((p.Y - a.Y) / (b.Y - a.Y))) < p.X)
            {
                sum += b.Y > a.Y ? -edge.Rise : edge.Rise;
            }
        }

        return sum;
    }
}
