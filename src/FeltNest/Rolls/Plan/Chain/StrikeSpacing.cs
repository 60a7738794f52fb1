using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;

namespace FeltNest.Rolls.Plan.Chain;

/// <summary>How far one strike must stand behind another, for every difference of their shifts.</summary>
/// <remarks>Two parts are as far apart as the moving one's origin is from their no-fit region; so the forbidden advances are ranges of a
/// level line within the gap of that region, for every pair of panels, exact on the parts' polygons. Strikes on one line, whole feeds
/// apart, are the layout and need no test. Strikes further apart than their length and the gap are always clear. Where three strikes in a
/// row could meet (length and gap over two feeds), advances off the line are at least length and gap less one feed, so that only neighbours
/// meet: safe, and at that place a little more than geometry alone would ask.</remarks>
internal sealed class StrikeSpacing
{
    private readonly StrikePattern pattern;
    private readonly StrikeGrid grid;
    private readonly double gap;
    private readonly Dictionary<(int, double, int, double), IReadOnlyList<Point2[]>> regions = [];
    private readonly (List<(int From, int To)> Islands, int Clear)[] allowed;

    internal StrikeSpacing(StrikePattern pattern, StrikeGrid grid, double gap)
    {
        (this.pattern, this.grid, this.gap) = (pattern, grid, gap);
        ClearSteps = (int)Math.Ceiling((pattern.LengthMm + gap) / grid.StepMm) + 1;
        LeastSteps = Math.Max(grid.FeedSteps, (int)Math.Ceiling((pattern.LengthMm + gap - pattern.FeedMm) / grid.StepMm));
        allowed = [.. Enumerable.Range(-2 * grid.SideSteps, (4 * grid.SideSteps) + 1).Select(side => Allowed(side * grid.SideStepMm))];
    }

    /// <summary>Steps from which any two strikes are clear of each other.</summary>
    internal int ClearSteps { get; }

    /// <summary>Fewest steps of an advance off the line.</summary>
    internal int LeastSteps { get; }

    /// <summary>Ranges of steps allowed before all are, when the second strike stands so many steps across from the first.</summary>
    internal IReadOnlyList<(int From, int To)> Islands(int side) => allowed[side + (2 * grid.SideSteps)].Islands;

    /// <summary>Steps from which every advance is allowed.</summary>
    internal int Clear(int side) => allowed[side + (2 * grid.SideSteps)].Clear;

    private (List<(int From, int To)> Islands, int Clear) Allowed(double side)
    {
        bool[] barred = new bool[ClearSteps];
        foreach (StrikePanel first in pattern.Panels)
        {
            foreach (StrikePanel second in pattern.Panels)
            {
                // Only pairs that an advance of one feed or more can bring together.
                if (first.MaxX - second.MinX + gap >= pattern.FeedMm
                    && second.MinY + side <= first.MaxY + gap
                    && second.MaxY + side >= first.MinY - gap)
                {
                    Bar(barred, first, second, side);
                }
            }
        }

        List<(int From, int To)> runs = [];
        for (int step = LeastSteps; step < ClearSteps; step++)
        {
            if (!barred[step])
            {
                runs.Add((step, step));
                while (step + 1 < ClearSteps && !barred[step + 1])
                {
                    runs[^1] = (runs[^1].From, ++step);
                }
            }
        }

        if (runs.Count > 0 && runs[^1].To == ClearSteps - 1)
        {
            int clear = runs[^1].From;
            runs.RemoveAt(runs.Count - 1);
            return (runs, clear);
        }

        return (runs, Math.Max(ClearSteps, LeastSteps));
    }

    private void Bar(bool[] barred, StrikePanel first, StrikePanel second, double side)
    {
        double x = second.Placed.XMm - first.Placed.XMm;
        double y = second.Placed.YMm + side - first.Placed.YMm;
        foreach (XRange range in LevelLine.Near(Region(first, second), y, gap))
        {
            int from = Math.Max(0, (int)Math.Ceiling(((range.From - x) / grid.StepMm) - 1e-9));
            int to = Math.Min(barred.Length - 1, (int)Math.Floor(((range.To - x) / grid.StepMm) + 1e-9));
            for (int step = from; step <= to; step++)
            {
                barred[step] = true;
            }
        }
    }

    private IReadOnlyList<Point2[]> Region(StrikePanel first, StrikePanel second)
    {
        (int, double, int, double) key = (first.Placed.Part, first.Placed.AngleDeg, second.Placed.Part, second.Placed.AngleDeg);
        return regions.TryGetValue(key, out IReadOnlyList<Point2[]>? rings)
            ? rings
            : regions[key] = NoFitRegion.Of(first.Turned, second.Turned).Rings;
    }
}
