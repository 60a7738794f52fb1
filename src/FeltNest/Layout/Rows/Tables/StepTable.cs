using System.Numerics;

namespace FeltNest.Layout.Rows.Tables;

/// <summary>How far above one part another must stand, as a function of its shift along the roll: the upper boundary of the no-fit region, gap included, sampled.</summary>
internal sealed class StepTable
{
    private readonly int first;
    private readonly double[] steps;
    private readonly double grid;

    private StepTable(int first, double[] steps, double grid)
    {
        this.first = first;
        this.steps = steps;
        this.grid = grid;
    }

    /// <summary>Least shift with any contact.</summary>
    internal double MinShift => first * grid;

    /// <summary>Greatest shift with any contact.</summary>
    internal double MaxShift => (first + steps.Length - 1) * grid;

    /// <summary>Distance between samples, mm.</summary>
    internal double Grid => grid;

    /// <summary>Greatest step at any shift.</summary>
    internal double Highest => steps.Max();

    /// <summary>The table for <paramref name="above"/> over <paramref name="below"/>.</summary>
    internal static StepTable Make(TurnedPart below, TurnedPart above)
    {
        double[] top = below.TopGrown, bottom = above.Bottom;
        int first = below.FirstGrown - (above.First + bottom.Length - 1);
        double[] steps = new double[top.Length + bottom.Length - 1];
        for (int n = 0; n < steps.Length; n++)
        {
            // Sample i of the lower part meets sample i - shift of the upper one.
            int offset = below.FirstGrown - above.First - (first + n);
            int from = Math.Max(0, -offset), to = Math.Min(top.Length, bottom.Length - offset);
            steps[n] = GreatestDifference(top.AsSpan(from, to - from), bottom.AsSpan(from + offset, to - from));
        }

        return new StepTable(first, steps, below.Grid);
    }

    /// <summary>Least step at a shift, straight between samples; minus infinity where the parts never meet.</summary>
    internal double At(double shift)
    {
        double place = (shift / grid) - first;
        int i = (int)Math.Floor(place);
        if (i < -1 || i >= steps.Length)
        {
            return double.NegativeInfinity;
        }

        double a = i < 0 ? double.NegativeInfinity : steps[i], b = i + 1 >= steps.Length ? double.NegativeInfinity : steps[i + 1];
        return double.IsNegativeInfinity(a) || double.IsNegativeInfinity(b) ? Math.Max(a, b) : a + ((b - a) * (place - i));
    }

    /// <summary>Least step against a whole row of pitch <paramref name="pitch"/>.</summary>
    internal double AtRow(double shift, double pitch)
    {
        double greatest = double.NegativeInfinity;
        for (double at = shift - (Math.Floor((shift - MinShift + grid) / pitch) * pitch); at <= MaxShift + grid; at += pitch)
        {
            greatest = Math.Max(greatest, At(at));
        }

        return greatest;
    }

    /// <summary>Least step over a row of pitch <paramref name="pitch"/> and the shift at which it is had, within [0, pitch).</summary>
    internal (double Step, double Shift) LeastOverRow(double pitch)
    {
        int count = Math.Max(8, (int)Math.Ceiling(pitch / grid));
        (double step, double shift) = (double.PositiveInfinity, 0);
        for (int i = 0; i < count; i++)
        {
            double at = pitch * i / count, value = AtRow(at, pitch);
            if (value < step)
            {
                (step, shift) = (value, at);
            }
        }

        return (step, shift);
    }

    /// <summary>Runs of shifts at which the step exceeds a level.</summary>
    internal List<(double From, double To)> Above(double level)
    {
        List<(double From, double To)> runs = [];
        double start = double.NaN;
        for (int i = 0; i <= steps.Length; i++)
        {
            bool over = i < steps.Length && steps[i] > level;
            if (over && double.IsNaN(start))
            {
                start = Crossing(i - 1, level);
            }
            else if (!over && !double.IsNaN(start))
            {
                runs.Add((start, Crossing(i - 1, level)));
                start = double.NaN;
            }
        }

        return runs;
    }

    // Where the line between samples i and i + 1 passes the level; beyond the table the parts, sampled half a step short on both sides, end one step on.
    private double Crossing(int i, double level)
    {
        if (i < 0)
        {
            return MinShift - grid;
        }

        if (i + 1 >= steps.Length)
        {
            return MaxShift + grid;
        }

        double a = steps[i], b = steps[i + 1];
        double share = double.IsInfinity(a) ? 1 : double.IsInfinity(b) ? 0 : (level - a) / (b - a);
        return (first + i + share) * grid;
    }

    private static double GreatestDifference(ReadOnlySpan<double> top, ReadOnlySpan<double> bottom)
    {
        double greatest = double.NegativeInfinity;
        int i = 0, width = Vector<double>.Count;
        if (top.Length >= width)
        {
            Vector<double> most = new(double.NegativeInfinity);
            for (; i <= top.Length - width; i += width)
            {
                most = Vector.Max(most, new Vector<double>(top[i..]) - new Vector<double>(bottom[i..]));
            }

            for (int k = 0; k < width; k++)
            {
                greatest = Math.Max(greatest, most[k]);
            }
        }

        for (; i < top.Length; i++)
        {
            greatest = Math.Max(greatest, top[i] - bottom[i]);
        }

        return greatest;
    }
}
