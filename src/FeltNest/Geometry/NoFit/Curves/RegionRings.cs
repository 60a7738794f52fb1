namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>Links the edges that part the region from what lies outside it into simple rings.</summary>
internal static class RegionRings
{
    /// <summary>Simple rings with the region on their left. Places on a straight side at which a corner of one part meets a corner of the
    /// other stay: parts that tile meet there.</summary>
    internal static List<Point2[]> Of(CurveArrangement arrangement, CurveFaces faces)
    {
        List<Point2[]> rings = [];
        bool[] used = new bool[faces.HalfEdges];
        Dictionary<int, int> onPath = [];
        List<int> path = [];
        for (int first = 0; first < faces.HalfEdges; first++)
        {
            if (used[first] || !IsBoundary(faces, first))
            {
                continue;
            }

            path.Clear();
            onPath.Clear();
            for (int h = first; !used[h]; h = After(faces, h))
            {
                used[h] = true;
                onPath[faces.From(h)] = path.Count;
                path.Add(faces.From(h));

                // A place met again closes a ring of its own.
                if (onPath.TryGetValue(faces.To(h), out int start))
                {
                    List<int> ring = path[start..];
                    rings.Add([.. ring.Select(v => arrangement.Places[v])]);
                    path.RemoveRange(start, path.Count - start);
                    ring.ForEach(v => onPath.Remove(v));
                }
            }
        }

        return rings;
    }

    private static bool IsBoundary(CurveFaces faces, int h) => faces.Left(h) > 0 && faces.Left(h ^ 1) <= 0;

    // The next boundary edge, turning over the region.
    private static int After(CurveFaces faces, int h)
    {
        int k = faces.Next(h);
        while (!IsBoundary(faces, k))
        {
            k = faces.Next(k ^ 1);
        }

        return k;
    }
}
