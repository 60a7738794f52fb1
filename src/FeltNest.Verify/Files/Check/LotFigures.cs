namespace FeltNest.Files.Check;

/// <summary>A die against a new lot of felt: figures of the gap from its places, the verdict from the shares outside the glue's
/// range.</summary>
internal static class LotFigures
{
    // Columns of a place.
    private const int Columns = 6;
    private const int Share = 1;

    // Room for gaps on an end of the glue's range, mm, and for shares that differ by rounding, per cent.
    private const double OnEnd = 1e-9;
    private const double Rounding = 1e-6;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<double[]> places = top.Rows("gaps", Columns);
        top.Keep(
            places.Count > 0 && places.Sum(place => place[Share]) <= 1 + Shares.Rounding, "gaps", "stand for more than the whole seam");
        top.Keep(places.Zip(places.Skip(1)).All(pair => pair.First[0] < pair.Second[0]), "gaps", "do not go round the seam");
        (double From, double To) glue = (top.Number("glueFromMm"), top.Number("glueToMm"));
        top.Keep(glue.From < glue.To, "glueToMm", "is not above glueFromMm");
        StatedFields fitting = top.Needed("atFitting");
        StatedFields cured = top.Needed("afterCure");
        Gap(fitting.Needed("before"), places, 2, glue);
        Gap(fitting.Needed("after"), places, 3, glue);
        (double meanBefore, double outBefore) = Gap(cured.Needed("before"), places, 4, glue);
        (double meanAfter, double outAfter) = Gap(cured.Needed("after"), places, 5, glue);
        top.Same("meanChangeMm", meanAfter - meanBefore, Shares.Room(meanAfter));
        double interval = Math.Sqrt(top.Items("changes").Sum(change => Square(change.Optional("meanGapMm") ?? 0)));
        top.Same("meanIntervalMm", interval, Shares.Room(interval));
        string verdict = outAfter <= Rounding ? "within" : Other(outBefore, outAfter);
        top.Keep(top.Text("verdict") == verdict, "verdict", $"has to be {verdict}");
    }

    private static string Other(double before, double after) => after <= before + Rounding ? "no-worse" : "worse";

    private static double Square(double value) => value * value;

    private static (double Mean, double Outside) Gap(
        StatedFields gap, IReadOnlyList<double[]> places, int column, (double From, double To) glue)
    {
        double mean = places.Sum(place => place[Share] * place[column]) / places.Sum(place => place[Share]);
        double inside = places.Where(place => place[column] >= glue.From - OnEnd && place[column] <= glue.To + OnEnd)
            .Sum(place => place[Share]);
        double outside = Math.Max(0, 100 * (1 - inside));
        gap.Same("meanMm", mean, Shares.Room(mean));
        gap.Same("leastMm", places.Min(place => place[column]), Shares.Room(1));
        gap.Same("greatestMm", places.Max(place => place[column]), Shares.Room(1));
        gap.Same("outsidePercent", outside, Shares.Room(outside));
        return (mean, outside);
    }
}
