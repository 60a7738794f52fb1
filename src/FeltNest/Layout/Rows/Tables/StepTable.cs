using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FeltNest.Layout.Rows.Tables;

/// <summary>How far above one part another must stand, as a function of its shift along the roll: the upper boundary of the no-fit region,
/// gap included, sampled.</summary>
/// <remarks>The hot loops work on as many samples at once as the machine's vectors hold. Every sample is computed alone and only greatest
/// values are taken over them, so the tables are the same bits whatever the width of the vectors. They are compiled in full at their first
/// call: in a process that lays one width they would else run unoptimised.</remarks>
internal sealed class StepTable
{
    private readonly int first;
    private readonly double[] steps;
    private readonly double grid;

    // The steps with each end repeated once: between these every shift with contact has two neighbours.
    private readonly double[] padded;

    private StepTable(int first, double[] steps, double grid)
    {
        this.first = first;
        this.steps = steps;
        this.grid = grid;
        padded = [steps[0], .. steps, steps[^1]];
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
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static StepTable Make(TurnedPart below, TurnedPart above)
    {
        double[] top = below.TopGrown;
        double[] bottom = above.Bottom;
        int first = below.FirstGrown - (above.First + bottom.Length - 1);
        double[] steps = new double[top.Length + bottom.Length - 1];
        for (int n = 0; n < steps.Length; n++)
        {
            // Sample i of the lower part meets sample i - shift of the upper one.
            int offset = below.FirstGrown - above.First - (first + n);
            int from = Math.Max(0, -offset);
            int to = Math.Min(top.Length, bottom.Length - offset);
            steps[n] = GreatestDifference(top.AsSpan(from, to - from), bottom.AsSpan(from + offset, to - from));
        }

        return new StepTable(first, steps, below.Grid);
    }

    /// <summary>The table of both parts mirrored along the roll.</summary>
    internal StepTable Mirrored()
    {
        double[] reversed = [.. steps];
        Array.Reverse(reversed);
        return new StepTable(-(first + steps.Length - 1), reversed, grid);
    }

    /// <summary>Least step at a shift, straight between samples; minus infinity where the parts never meet.</summary>
    internal double At(double shift)
    {
        double place = (shift / grid) - first + 1;
        double whole = Math.Floor(place);
        if (whole < 0 || whole >= padded.Length - 1)
        {
            return double.NegativeInfinity;
        }

        int i = (int)whole;
        return padded[i] + ((padded[i + 1] - padded[i]) * (place - whole));
    }

    /// <summary>Least step against a whole row of pitch <paramref name="pitch"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal double AtRow(double shift, double pitch)
    {
        double greatest = double.NegativeInfinity;
        double stride = pitch / grid;
        double place = (shift / grid) - first + 1;
        for (place -= Math.Floor(place / stride) * stride; place < padded.Length - 1; place += stride)
        {
            int i = (int)place;
            double value = padded[i] + ((padded[i + 1] - padded[i]) * (place - i));
            greatest = value > greatest ? value : greatest;
        }

        return greatest;
    }

    /// <summary>Least step over a row of pitch <paramref name="pitch"/> and the shift at which it is had, within [0, pitch).</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal (double Step, double Shift) LeastOverRow(double pitch)
    {
        // Whole parts of the pitch, at most a grid step apart: shifts that are simple fractions of the pitch are met exactly.
        int count = Math.Max(8, (int)Math.Ceiling(pitch / grid));
        double stride = pitch / grid;
        double apart = stride / count;
        double last = padded.Length - 1;
        double[] row = new double[count];
        Array.Fill(row, double.NegativeInfinity);

        // Copy by copy of the row below; shift i stands at place start + i * apart of the table.
        double start = 1.0 - first;
        for (start -= Math.Ceiling((start + stride) / stride) * stride; start < last; start += stride)
        {
            for (int i = Math.Max(0, (int)Math.Ceiling(-start / apart)); i < count; i++)
            {
                double place = start + (i * apart);
                if (place >= last)
                {
                    break;
                }

                int whole = (int)place;
                double value = padded[whole] + ((padded[whole + 1] - padded[whole]) * (place - whole));
                row[i] = value > row[i] ? value : row[i];
            }
        }

        int best = 0;
        for (int i = 1; i < count; i++)
        {
            best = row[i] < row[best] ? i : best;
        }

        return (row[best], pitch * best / count);
    }

    /// <summary>Runs of shifts at which the step exceeds a level.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal List<(double From, double To)> Above(double level)
    {
        List<(double From, double To)> runs = [];
        double? start = null;
        for (int i = 0; i <= steps.Length; i++)
        {
            bool over = i < steps.Length && steps[i] > level;
            if (over && start is null)
            {
                start = Crossing(i - 1, level);
            }
            else if (!over && start is { } from)
            {
                runs.Add((from, Crossing(i - 1, level)));
                start = null;
            }
        }

        return runs;
    }

    // Where the line between samples i and i + 1 passes the level; beyond the table the parts, sampled half a step short on both sides, end
    // one step on.
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

        double a = steps[i];
        double b = steps[i + 1];
        double share;
        if (double.IsInfinity(a))
        {
            share = 1;
        }
        else if (double.IsInfinity(b))
        {
            share = 0;
        }
        else
        {
            share = (level - a) / (b - a);
        }

        return (first + i + share) * grid;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double GreatestDifference(ReadOnlySpan<double> top, ReadOnlySpan<double> bottom)
    {
        double greatest = double.NegativeInfinity;
        int i = 0;
        int width = Vector<double>.Count;
        if (top.Length >= 4 * width)
        {
            // Four at a time: a greatest value waits for the one before it, four of them do not wait for each other.
            Vector<double> a = new(double.NegativeInfinity);
            Vector<double> b = a;
            Vector<double> c = a;
            Vector<double> d = a;
            ReadOnlySpan<Vector<double>> tops = MemoryMarshal.Cast<double, Vector<double>>(top);
            ReadOnlySpan<Vector<double>> bottoms = MemoryMarshal.Cast<double, Vector<double>>(bottom);
            int whole = Math.Min(tops.Length, bottoms.Length) & ~3;
            for (int k = 0; k < whole; k += 4)
            {
                a = Vector.Max(a, tops[k] - bottoms[k]);
                b = Vector.Max(b, tops[k + 1] - bottoms[k + 1]);
                c = Vector.Max(c, tops[k + 2] - bottoms[k + 2]);
                d = Vector.Max(d, tops[k + 3] - bottoms[k + 3]);
            }

            a = Vector.Max(Vector.Max(a, b), Vector.Max(c, d));
            for (int k = 0; k < width; k++)
            {
                greatest = Math.Max(greatest, a[k]);
            }

            i = whole * width;
        }

        for (; i < top.Length; i++)
        {
            greatest = Math.Max(greatest, top[i] - bottom[i]);
        }

        return greatest;
    }
}
