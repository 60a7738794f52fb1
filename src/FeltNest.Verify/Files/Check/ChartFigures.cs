namespace FeltNest.Files.Check;

/// <summary>Control charts: mean, limits and verdicts worked out again from the counts.</summary>
internal static class ChartFigures
{
    // Mean range of two normal values in standard deviations, and the upper limit of such a range in mean ranges.
    private const double RangeOfTwo = 1.128;
    private const double MostRange = 3.267;

    /// <summary>Checks the charts of a file.</summary>
    public static void Check(IReadOnlyList<StatedFields> charts)
    {
        foreach (StatedFields chart in charts)
        {
            IReadOnlyList<StatedFields> points = chart.Items("points");
            double noise = points.Sum(p => p.Number("noiseShare"));
            chart.Same("expectedByNoise", noise, Shares.Room(noise));
            switch (chart.Text("kind"))
            {
                case "share":
                    Counted(chart, points, (mean, size) => Math.Sqrt(mean * (1 - mean) / size));
                    break;
                case "rate":
                    Counted(chart, points, (mean, size) => Math.Sqrt(mean / size));
                    break;
                case "individuals":
                    Single(chart, points, MeanRange(points) * 3 / RangeOfTwo, null);
                    break;
                case "moving-range":
                    Single(chart, points, null, MostRange);
                    break;
                default:
                    chart.Keep(false, "kind", "is not known");
                    break;
            }

            foreach (StatedFields point in points)
            {
                double value = point.Number("value");
                point.Same("cause", value < point.Number("low") || value > point.Number("high"));
            }
        }
    }

    private static void Counted(StatedFields chart, IReadOnlyList<StatedFields> points, Func<double, double, double> sigma)
    {
        double mean = points.Sum(p => p.Number("count")) / points.Sum(p => p.Number("size"));
        chart.Same("centre", mean, Shares.Rounding * mean);
        double[] z = [.. points.Select(p => ((p.Number("count") / p.Number("size")) - mean) / sigma(mean, p.Number("size")))];
        double spread = Enumerable.Range(1, z.Length - 1).Average(i => Math.Abs(z[i] - z[i - 1])) / RangeOfTwo;
        chart.Same("sigmaZ", spread, Shares.Room(spread));
        bool widened = chart.Flag("widened");
        foreach (StatedFields point in points)
        {
            double size = point.Number("size");
            double room = 3 * sigma(mean, size) * (widened ? spread : 1);
            point.Same("value", point.Number("count") / size, Shares.Rounding * mean);
            point.Same("low", Math.Max(0, mean - room), Shares.Rounding * mean);
            point.Same("high", mean + room, Shares.Rounding * mean);
        }
    }

    private static void Single(StatedFields chart, IReadOnlyList<StatedFields> points, double? room, double? most)
    {
        double mean = points.Average(p => p.Number("value"));
        chart.Same("centre", mean, Shares.Room(mean));
        foreach (StatedFields point in points)
        {
            double value = point.Number("value");
            point.Same("count", value, Shares.Room(value));
            point.Same("size", 1, 0);
            point.Same("low", room is null ? 0 : mean - room.Value, Shares.Room(mean));
            point.Same("high", room is null ? most!.Value * mean : mean + room.Value, Shares.Room(mean));
        }

        // An empty list would count as looked at, and all its fields with it.
        foreach (StatedFields change in room is null ? [] : chart.Items("change"))
        {
            double sigma = (room ?? 0) / 3;
            change.Same("sigmas", change.Number("percent") / 100 * mean / sigma, Shares.Room(1));
        }
    }

    private static double MeanRange(IReadOnlyList<StatedFields> points) =>
        Enumerable.Range(1, points.Count - 1).Average(i => Math.Abs(points[i].Number("value") - points[i - 1].Number("value")));
}
