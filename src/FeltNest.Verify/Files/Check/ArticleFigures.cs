namespace FeltNest.Files.Check;

/// <summary>A measured panel: every figure that follows from its points.</summary>
internal static class ArticleFigures
{
    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<double[]> points = top.Rows("points", 3);
        top.Keep(points.Count > 0, "points", "is empty");
        if (points.Count == 0)
        {
            return;
        }

        double half = top.Number("panelProfileMm") / 2;
        double[] worst = points.MaxBy(p => Math.Abs(p[2]))!;
        double mean = points.Average(p => p[2]);
        double rms = Math.Sqrt(points.Average(p => p[2] * p[2]));
        top.Same("worstMm", worst[2], Shares.Room(worst[2]));
        top.Same("meanMm", mean, Shares.Room(mean));
        top.Same("rmsMm", rms, Shares.Room(rms));
        top.Same("failing", points.Count(p => Math.Abs(p[2]) > half), 0);
        top.Same("passed", Math.Abs(worst[2]) <= half);

        StatedFields place = top.Needed("worstPlace");
        place.Same("x", worst[0], Shares.Room(worst[0]));
        place.Same("y", worst[1], Shares.Room(worst[1]));
    }
}
