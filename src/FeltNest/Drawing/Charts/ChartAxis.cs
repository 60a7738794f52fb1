namespace FeltNest.Drawing.Charts;

/// <summary>One axis of a chart: where it begins and ends, and its even steps.</summary>
internal readonly record struct ChartAxis
{
    /// <summary>Value at its beginning.</summary>
    public required double Low { get; init; }

    /// <summary>Value at its end.</summary>
    public required double High { get; init; }

    /// <summary>Distance of two ticks.</summary>
    public required double Step { get; init; }

    /// <summary>The axis that holds all values, with steps of 1, 2 or 5 times a power of ten, about <paramref name="ticks"/> of
    /// them.</summary>
    public static ChartAxis Around(IEnumerable<double> values, int ticks)
    {
        double[] all = [.. values.Where(double.IsFinite)];
        double low = all.Min();
        double high = all.Max();
        double span = high > low ? high - low : Math.Max(1, Math.Abs(high) * 0.1);
        double power = Math.Pow(10, Math.Floor(Math.Log10(span / ticks)));
        double share = span / ticks / power;
        double step = power * Round(share);

        // A value on a tick stays on it in spite of rounding.
        const double slack = 1e-9;
        double from = Math.Floor((low / step) + slack) * step;
        double to = Math.Ceiling((high / step) - slack) * step;
        return new ChartAxis { Low = from, High = to > from ? to : from + step, Step = step };
    }

    // The next round step.
    private static double Round(double share) => share switch
    {
        <= 1 => 1,
        <= 2 => 2,
        <= 5 => 5,
        _ => 10,
    };

    /// <summary>Values of the ticks.</summary>
    public IEnumerable<double> Ticks()
    {
        ChartAxis axis = this;
        return Enumerable.Range(0, (int)Math.Round((High - Low) / Step) + 1).Select(i => axis.Low + (i * axis.Step));
    }

    /// <summary>How far along the axis a value lies, 0 to 1.</summary>
    public double Share(double value) => (value - Low) / (High - Low);

    /// <summary>Format with as many decimals as the step needs.</summary>
    public string Format => Step >= 1 ? "0" : "0." + new string('0', (int)Math.Ceiling(-Math.Log10(Step) - 1e-9));
}
