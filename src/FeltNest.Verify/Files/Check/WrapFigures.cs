namespace FeltNest.Files.Check;

/// <summary>An outline laid on a ball: places on the sphere, gaps, energies.</summary>
internal static class WrapFigures
{
    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        double radius = top.Number("radiusMm");
        Free(top.Needed("edgeFree"), radius);
        StatedFields cured = top.Needed("afterCure");
        Free(cured, radius);
        StatedFields? held = top.Inner("edgeHeld");
        top.Keep(held is null == top.Text("whyNotHeld") is not null, "whyNotHeld", "has to stand there exactly where no held edge does");

        // Who pulls the edge to the seam adds energy, and so does the room for the adhesive that is closed.
        double least = cured.Number("energyNmm");
        held?.Keep(held.Number("energyNmm") >= least * (1 - 1e-3), "energyNmm", "is below that of the free edge");
        if (top.Inner("smoothing") is { } smoothing)
        {
            smoothing.Keep(smoothing.Number("rmsMm") <= smoothing.Number("greatestMm"), "rmsMm", "is more than greatestMm");
        }
    }

    private static void Free(StatedFields free, double radius)
    {
        foreach (double[] p in free.Rows("edge", 3))
        {
            double off = Math.Sqrt((p[0] * p[0]) + (p[1] * p[1]) + (p[2] * p[2])) - radius;
            free.Keep(
                Math.Abs(off) <= Shares.Room(radius), "edge", FormattableString.Invariant($"holds a place {off:0.####} mm off the sphere"));
        }

        IReadOnlyList<double[]> gaps = free.Rows("gaps", 2);
        int places = free.Rows("edge", 3).Count;
        free.Keep(
            gaps.Zip(gaps.Skip(1)).All(p => p.First[0] < p.Second[0]) && gaps.All(g => g[0] >= 0 && g[0] < places), "gaps",
            "are not in the order of the edge");
        double? gap = gaps.Count == 0 ? null : Math.Max(0, gaps.Max(g => g[1]));
        double? overlap = gaps.Count == 0 ? null : Math.Max(0, -gaps.Min(g => g[1]));
        free.Same("largestGapMm", gap, Shares.Room(gap ?? 0));
        free.Same("largestOverlapMm", overlap, Shares.Room(overlap ?? 0));
    }
}
