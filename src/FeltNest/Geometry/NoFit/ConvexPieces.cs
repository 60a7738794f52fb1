namespace FeltNest.Geometry.NoFit;

/// <summary>Cuts an outline into convex pieces whose closures cover it and whose interiors are disjoint.</summary>
/// <remarks>Triangles merged along diagonals that are not needed: S. Hertel and K. Mehlhorn, <i>Fast triangulation of simple polygons</i>,
/// FCT 1983, at most four times the least count.</remarks>
internal static class ConvexPieces
{
    /// <summary>The outline itself when convex, else its pieces, each counter-clockwise.</summary>
    public static IReadOnlyList<Point2[]> Of(Outline outline)
    {
        IReadOnlyList<Point2> points = outline.Points;
        if (IsConvex(points))
        {
            return [[.. points]];
        }

        List<List<Point2>> pieces = [.. PolygonSets.Triangles(points).Select(t => t.ToList())];
        while (Merged(pieces) is { } fewer)
        {
            pieces = fewer;
        }

        return [.. pieces.Select(p => p.ToArray())];
    }

    // Each piece joined with a neighbour where the two together are convex, each once; null where none could be.
    private static List<List<Point2>>? Merged(List<List<Point2>> pieces)
    {
        Dictionary<(Point2, Point2), int> edges = [];
        for (int i = 0; i < pieces.Count; i++)
        {
            for (int k = 0; k < pieces[i].Count; k++)
            {
                edges[(pieces[i][k], pieces[i][(k + 1) % pieces[i].Count])] = i;
            }
        }

        bool[] touched = new bool[pieces.Count];
        List<List<Point2>> next = [];
        for (int i = 0; i < pieces.Count; i++)
        {
            for (int k = 0; k < pieces[i].Count && !touched[i]; k++)
            {
                Point2 from = pieces[i][k];
                Point2 to = pieces[i][(k + 1) % pieces[i].Count];
                if (edges.TryGetValue((to, from), out int other) && other != i && !touched[other]
                    && Joined(pieces[i], k, pieces[other], to) is { } both && IsConvex(both))
                {
                    next.Add(both);
                    touched[i] = touched[other] = true;
                }
            }
        }

        if (next.Count == 0)
        {
            return null;
        }

        next.AddRange(pieces.Where((_, i) => !touched[i]));
        return next;
    }

    /// <summary>True when no corner turns right.</summary>
    public static bool IsConvex(IReadOnlyList<Point2> points)
    {
        for (int i = 0; i < points.Count; i++)
        {
            if (Predicates.Turn(points[i], points[(i + 1) % points.Count], points[(i + 2) % points.Count]) < 0)
            {
                return false;
            }
        }

        return true;
    }

    private static List<Point2> Joined(List<Point2> a, int edge, List<Point2> b, Point2 start)
    {
        int at = b.IndexOf(start);
        List<Point2> both = [];
        for (int k = 1; k <= a.Count; k++)
        {
            both.Add(a[(edge + k) % a.Count]);
        }

        for (int k = 2; k < b.Count; k++)
        {
            both.Add(b[(at + k) % b.Count]);
        }

        return both;
    }
}
