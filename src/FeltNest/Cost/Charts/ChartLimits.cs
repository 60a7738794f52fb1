using FeltNest.Numerics;

namespace FeltNest.Cost.Charts;

/// <summary>Limits of control charts from counting noise, and how often pure noise lies outside them.</summary>
/// <remarks>p +- 3 sqrt(p (1 - p) / n), u +- 3 sqrt(u / n), individuals with 2.66 times the mean moving range: NIST/SEMATECH e-Handbook of
/// Statistical Methods, 6.3.3.2, 6.3.3.1, 6.3.2.2. Days that differ by more than counting: D. B. Laney, "Improved control charts for
/// attributes", Quality Engineering 14 (2002) 531-537.</remarks>
internal static class ChartLimits
{
    /// <summary>Mean range of two values of a normal distribution, in standard deviations: 2 / sqrt(pi).</summary>
    public const double RangeOfTwo = 1.128;

    /// <summary>Upper limit of a moving range of two, in mean ranges.</summary>
    public const double MostRange = 3.267;

    private const double Sigmas = 3;

    // The spread of sigma z by pure noise, of k points, is near this over sqrt(k - 1); limits are widened from two of these on.
    private const double SpreadOfSigma = 0.909;

    // Of fewer points sigma z is no estimate: two rolls that really differ would widen the limits until they hold both.
    private const int FewestToWiden = 10;

    /// <summary>A chart of shares.</summary>
    /// <param name="name">What it shows.</param>
    /// <param name="points">Name, count, of how many.</param>
    public static ControlChart? Shares(string name, IReadOnlyList<(string Name, double Count, double Size)> points) =>
        Counted(
            name, ChartKind.Share, "share", points, (mean, size) => Math.Sqrt(mean * (1 - mean) / size), CountDistribution.BinomialOutside);

    /// <summary>A chart of events for a length.</summary>
    public static ControlChart? Rates(string name, string unit, IReadOnlyList<(string Name, double Count, double Size)> points) =>
        Counted(name, ChartKind.Rate, unit, points, (mean, size) => Math.Sqrt(mean / size), CountDistribution.PoissonOutside);

    /// <summary>Single values, and their moving ranges; none below two values.</summary>
    public static IReadOnlyList<ControlChart> Individuals(string name, string unit, IReadOnlyList<(string Name, double Value)> values)
    {
        if (values.Count < 2)
        {
            return [];
        }

        double mean = values.Average(v => v.Value);
        double[] ranges = [.. values.Zip(values.Skip(1), (a, b) => Math.Abs(b.Value - a.Value))];
        double range = ranges.Average();
        double room = Sigmas * range / RangeOfTwo;
        return
        [
            new ControlChart
            {
                Name = name,
                Kind = ChartKind.Individuals,
                Unit = unit,
                Centre = mean,
                Points = [.. values.Select(v => Single(v.Name, v.Value, mean - room, mean + room, range > 0 ? NormalOutside(Sigmas) : 0))],
            },
            new ControlChart
            {
                Name = $"{name}, moving range",
                Kind = ChartKind.MovingRange,
                Unit = unit,
                Centre = range,
                Points =
                [
                    .. values.Skip(1).Zip(ranges, (v, r) => Single(
                        v.Name, r, 0, MostRange * range, range > 0 ? NormalOutside(MostRange * RangeOfTwo / Math.Sqrt(2)) : 0)),
                ],
            },
        ];
    }

    /// <summary>Points, on average, until a mean that has moved by so many standard deviations puts one outside known limits.</summary>
    public static double RunLength(double sigmas) =>
        1 / (NormalDistribution.Below(sigmas - Sigmas) + NormalDistribution.Below(-Sigmas - sigmas));

    /// <summary>Laney's sigma z: the spread of standardised values from one to the next; 1 is pure counting noise.</summary>
    public static double SigmaZ(IReadOnlyList<double> standardised) =>
        standardised.Zip(standardised.Skip(1), (a, b) => Math.Abs(b - a)).Average() / RangeOfTwo;

    private static double NormalOutside(double sigmas) => 2 * NormalDistribution.Below(-sigmas);

    private static ChartPoint Single(string name, double value, double low, double high, double noise) => new()
    {
        Name = name,
        Count = value,
        Size = 1,
        Value = value,
        Low = low,
        High = high,
        NoiseShare = noise,
    };

    private static ControlChart? Counted(
        string name, ChartKind kind, string unit, IReadOnlyList<(string Name, double Count, double Size)> all,
        Func<double, double, double> sigma, Func<double, double, double, double, double> outside)
    {
        (string Name, double Count, double Size)[] points = [.. all.Where(p => p.Size > 0)];
        double mean = points.Sum(p => p.Count) / Math.Max(points.Sum(p => p.Size), double.Epsilon);
        if (points.Length < 2 || mean <= 0 || (kind == ChartKind.Share && mean >= 1))
        {
            return null;
        }

        double spread = SigmaZ([.. points.Select(p => ((p.Count / p.Size) - mean) / sigma(mean, p.Size))]);
        bool widened = points.Length >= FewestToWiden && spread > 1 + (2 * SpreadOfSigma / Math.Sqrt(points.Length - 1));
        return new ControlChart
        {
            Name = name,
            Kind = kind,
            Unit = unit,
            Centre = mean,
            SigmaZ = spread,
            IsWidened = widened,
            Points = [.. points.Select(Point)],
        };

        ChartPoint Point((string Name, double Count, double Size) p)
        {
            double room = Sigmas * sigma(mean, p.Size) * (widened ? spread : 1);
            (double low, double high) = (Math.Max(0, mean - room), mean + room);
            return new ChartPoint
            {
                Name = p.Name,
                Count = p.Count,
                Size = p.Size,
                Value = p.Count / p.Size,
                Low = low,
                High = high,
                NoiseShare = widened ? NormalOutside(Sigmas) : outside(mean, p.Size, low, high),
            };
        }
    }
}
