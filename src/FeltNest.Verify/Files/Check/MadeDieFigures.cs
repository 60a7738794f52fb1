namespace FeltNest.Files.Check;

/// <summary>A die as made: totals from the cavities, verdicts from distances and limits, angles from the bends.</summary>
internal static class MadeDieFigures
{
    private const double OneSide = 1.65;
    private const double Coverage = 2;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<StatedFields> cavities = top.Items("cavities");
        top.Keep(cavities.Count > 0, "cavities", "is empty");
        if (cavities.Count == 0)
        {
            return;
        }

        double profile = top.Number("edgeProfileMm");
        double position = top.Number("positionMm");
        double standard = (top.Optional("uncertaintyMm") ?? 0) / Coverage;
        double guard = OneSide * standard;
        top.Same("guardMm", guard, Shares.Room(guard));
        StatedFields.Grow(cavities, "number");
        double farthest = cavities.Max(Off);
        double widest = cavities.Max(c => c.Number("zoneMm"));
        double mean = cavities.Average(c => c.Number("meanOffMm"));
        top.Same("farthestMm", farthest, Shares.Room(farthest));
        top.Same("widestZoneMm", widest, Shares.Room(widest));
        top.Same("meanOffMm", mean, Shares.Room(mean));
        foreach (StatedFields cavity in cavities)
        {
            double reject = cavity.Number("rejectGuardMm");
            cavity.Keep(
                reject >= guard - Shares.Room(guard) && (standard > 0 || reject == 0), "rejectGuardMm", "is less than the guard");
            Said(cavity, "edge", cavity.Number("zoneMm") / 2, cavity.Number("hiddenMm"), profile / 2, guard, reject);
            Placed(cavity, (profile + position) / 2, position / 2, guard, reject);
        }

        Verdict(top, cavities);
        foreach (StatedFields bend in top.Items("bends"))
        {
            Bend(bend);
        }
    }

    private static double Off(StatedFields cavity) =>
        Math.Sqrt(Math.Pow(cavity.Number("offXMm"), 2) + Math.Pow(cavity.Number("offYMm"), 2));

    private static string Found(double worst, double hidden, double limit, double guard, double reject)
    {
        if (worst > limit + reject)
        {
            return "doesNotConform";
        }

        return Math.Max(worst, hidden) <= limit - guard ? "conforms" : "undecided";
    }

    private static void Said(StatedFields cavity, string field, double worst, double hidden, double limit, double guard, double reject)
    {
        string found = Found(worst, hidden, limit, guard, reject);
        cavity.Keep(cavity.Text(field) == found, field, $"should say {found}");
    }

    // Shape and place together, and the middle alone, whose guard is that of one value.
    private static void Placed(StatedFields cavity, double shape, double place, double guard, double reject)
    {
        double inPlace = Math.Abs(cavity.Number("inPlaceMm"));
        string[] both = [Found(inPlace, inPlace, shape, guard, reject), Found(Off(cavity), Off(cavity), place, guard, guard)];
        string found = both.Contains("doesNotConform") ? "doesNotConform" : both.FirstOrDefault(b => b != "conforms", "conforms");
        cavity.Keep(cavity.Text("position") == found, "position", $"should say {found}");
    }

    private static void Verdict(StatedFields top, IReadOnlyList<StatedFields> cavities)
    {
        string?[] all = [.. cavities.SelectMany(c => (string?[])[c.Text("edge"), c.Text("position")])];
        IReadOnlyList<double[]> missing = top.Rows("notMeasured", 1);
        double[] numbers = [.. cavities.Select(c => c.Number("number"))];
        top.Keep(missing.All(m => !numbers.Contains(m[0])), "notMeasured", "names a cavity that has points");
        string verdict = "undecided";
        if (all.Contains("doesNotConform"))
        {
            verdict = "doesNotConform";
        }
        else if (missing.Count == 0 && all.All(v => v == "conforms"))
        {
            verdict = "conforms";
        }

        top.Keep(top.Text("verdict") == verdict, "verdict", $"should say {verdict}");
        top.Same("passed", verdict == "conforms");
    }

    private static void Bend(StatedFields bend)
    {
        double wanted = bend.Number("wantedDeg");
        double opened = bend.Number("openedPercent") / 100;
        double got = wanted * (1 - opened);
        bend.Same("gotDeg", got, Shares.Room(got));
        double error = bend.Number("errorPercent") / 100;
        bend.Keep(error is >= 0 and < 1, "errorPercent", "is no standard error of a share");
        double set = Math.Abs(opened) > 2 * error ? wanted / (1 - opened) : wanted;
        bend.Same("setDeg", set, Shares.Room(set));
    }
}
