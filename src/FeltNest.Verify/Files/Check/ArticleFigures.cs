namespace FeltNest.Files.Check;

/// <summary>A measured panel: every figure that follows from its points, and that no turn or move makes the zone narrower.</summary>
internal static class ArticleFigures
{
    // Guard of ISO 14253-1 in standard uncertainties, the chance it leaves, and the coverage factor of what was entered.
    private const double OneSide = 1.65;
    private const double Risk = 0.05;
    private const double Coverage = 2;

    // Pulls of the points that hold the zone cancel to this share, and lie this near to its border, mm.
    private const double Balance = 1e-6;
    private const double AtBorder = 1e-5;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<double[]> points = top.Rows("points", 5);
        top.Keep(points.Count > 0, "points", "is empty");
        if (points.Count == 0)
        {
            return;
        }

        double half = top.Number("panelProfileMm") / 2;
        double[] worst = points.MaxBy(p => Math.Abs(p[2]))!;
        top.Same("worstMm", worst[2], Shares.Room(worst[2]));
        top.Same("zoneMm", 2 * Math.Abs(worst[2]), Shares.Room(worst[2]));
        top.Same("failing", points.Count(p => Math.Abs(p[2]) > half), 0);
        StatedFields place = top.Needed("worstPlace");
        place.Same("x", worst[0], Shares.Room(worst[0]));
        place.Same("y", worst[1], Shares.Room(worst[1]));
        Squares(top.Needed("leastSquares"), points);
        Hidden(top, points);
        Zone(top, Math.Abs(worst[2]));
        Verdict(top, Math.Abs(worst[2]), half, points.Count);
    }

    private static void Squares(StatedFields squares, IReadOnlyList<double[]> points)
    {
        double mean = points.Average(p => p[4]);
        double rms = Math.Sqrt(points.Average(p => p[4] * p[4]));
        double worst = points.MaxBy(p => Math.Abs(p[4]))![4];
        squares.Same("worstMm", worst, Shares.Room(worst));
        squares.Same("meanMm", mean, Shares.Room(mean));
        squares.Same("rmsMm", rms, Shares.Room(rms));
    }

    // The edge may leave each point at the steepness: where the lines of two neighbours meet it can be farthest off.
    private static void Hidden(StatedFields top, IReadOnlyList<double[]> points)
    {
        double steep = top.Number("steepness");
        double round = top.Number("perimeterMm");
        (double Along, double Off)[] order = [.. points.Select(p => (p[3], p[2])).OrderBy(p => p.Item1)];
        top.Keep(order[0].Along >= -Shares.Room(round) && order[^1].Along <= round + Shares.Room(round), "points",
            "has a foot that is not on the outline");
        double widest = 0;
        double farthest = 0;
        foreach (((double along, double off), int i) in order.Select((p, i) => (p, i)))
        {
            (double next, double other) = i + 1 < order.Length ? order[i + 1] : (order[0].Along + round, order[0].Off);
            double meet = (next - along + ((other - off) / steep)) / 2;
            double outside = off + (steep * meet);
            double inside = off - (steep * (next - along - meet));
            widest = Math.Max(widest, next - along);
            farthest = new[] { farthest, Math.Abs(off), outside, -inside }.Max();
        }

        top.Same("widestGapMm", widest, Shares.Room(round));
        top.Same("hiddenMm", farthest, Shares.Room(farthest) + Shares.Room(steep * round));
    }

    // At the narrowest zone the pulls of the points that hold it, outside against inside, leave no way and no turn.
    private static void Zone(StatedFields top, double half)
    {
        IReadOnlyList<double[]> held = top.Rows("heldBy", 6);
        if (top.Flag("inFrame"))
        {
            top.Keep(held.Count == 0, "heldBy", "holds points where nothing was moved");
            return;
        }

        if (half < AtBorder)
        {
            return;
        }

        double shares = held.Sum(p => p[5]);
        double x = held.Sum(p => p[5] * Math.Sign(p[2]) * p[3]);
        double y = held.Sum(p => p[5] * Math.Sign(p[2]) * p[4]);
        double turn = held.Sum(p => p[5] * Math.Sign(p[2]) * ((p[0] * p[4]) - (p[1] * p[3])));
        double size = held.Select(p => Math.Abs(p[0]) + Math.Abs(p[1])).DefaultIfEmpty(0).Max();
        top.Keep(Math.Abs(shares - 1) <= Balance && held.All(p => p[5] >= 0), "heldBy", "has shares that do not add to one");
        top.Keep(
            held.All(p => Math.Abs(Math.Abs(p[2]) - half) <= AtBorder), "heldBy", "holds a point that does not lie on the zone's border");
        top.Keep(
            held.All(p => Math.Abs((p[3] * p[3]) + (p[4] * p[4]) - 1) <= Balance), "heldBy", "has a direction that is not of length one");
        top.Keep(
            Math.Abs(x) <= Balance && Math.Abs(y) <= Balance && Math.Abs(turn) <= Balance * (1 + size), "heldBy",
            "does not hold the zone: a move or a turn would make it narrower");
    }

    private static void Verdict(StatedFields top, double worst, double half, int points)
    {
        double? expanded = top.Optional("uncertaintyMm");
        double standard = (expanded ?? 0) / Coverage;
        double guard = OneSide * standard;
        top.Same("guardMm", guard, Shares.Room(guard));
        double reject = top.Number("rejectGuardMm");
        double beyond = standard > 0 ? Below(-reject / standard) : 0;
        bool sound = standard > 0
            ? Math.Abs(beyond - (Risk / points)) <= Shares.Rounding || Math.Abs(reject - guard) <= Shares.Room(guard)
            : reject == 0;
        top.Keep(sound && reject >= guard - Shares.Room(guard), "rejectGuardMm", "does not leave 5 per cent among all points");
        double? within = standard > 0 ? Below((half - worst) / standard) - Below((-half - worst) / standard) : null;
        top.Same("chanceWithin", within, Shares.Rounding);

        string verdict = "undecided";
        if (worst > half + reject)
        {
            verdict = "doesNotConform";
        }
        else if (Math.Max(worst, top.Number("hiddenMm")) <= half - guard)
        {
            verdict = "conforms";
        }

        top.Keep(top.Text("verdict") == verdict, "verdict", $"should say {verdict}");
        top.Same("passed", verdict == "conforms");
        double room = half - guard - worst;
        double? spacing = room > 1e-6 ? 2 * room / top.Number("steepness") : null;
        top.Same("spacingWantedMm", spacing, Shares.Room(spacing ?? 0));
        top.Same("pointsWanted", spacing is null ? null : Math.Ceiling(top.Number("perimeterMm") / spacing.Value), 0);
    }

    // Share of the normal distribution below a value: Simpson's rule from the middle.
    private static double Below(double value)
    {
        const int parts = 2000;
        double reach = Math.Min(Math.Abs(value), 12);
        double Bell(int i) => Math.Exp(-Math.Pow(reach * i / parts, 2) / 2);
        double sum = Bell(0) + Bell(parts) + Enumerable.Range(1, parts - 1).Sum(i => Bell(i) * (i % 2 == 1 ? 4 : 2));
        double half = sum * reach / parts / 3 / Math.Sqrt(2 * Math.PI);
        return value < 0 ? 0.5 - half : 0.5 + half;
    }
}
