namespace FeltNest.Layout.Free;

/// <summary>Moves the panels of a lay one at a time until none overlaps, or the work is spent.</summary>
/// <remarks>Guided local search on the weighted sum of overlap depths: panels that keep overlapping weigh more and more against each other,
/// so that the search leaves the places where it is stuck. Follows J. Egeblad, B. Nielsen, A. Odgaard, <i>Fast neighborhood search for two-
/// and three-dimensional nesting problems</i>, EJOR 183, 2007 (from memory); differs in measuring depth in the no-fit region instead of
/// area, and in moving to sampled places instead of along lines.</remarks>
internal sealed class OverlapSearch
{
    // Overlaps below this share of the part's size are left to the exact polish.
    private const double Settled = 2e-3;

    // Places tried anew for a panel and angle, and near its present place; the best of them are walked downhill.
    private const int Anywhere = 24;
    private const int Nearby = 8;
    private const int Walked = 2;

    // First and last step of the walk as shares of the part's size.
    private const double FirstStep = 0.04;
    private const double LastStep = 5e-4;

    private readonly FreeAngles angles;
    private readonly double size;
    private readonly Random random;
    private readonly FreeLay lay;
    private readonly double[,] weights;
    private long work;

    private OverlapSearch(FreeAngles angles, FreeLay lay, double size, Random random)
    {
        (this.angles, this.lay, this.size, this.random) = (angles, lay, size, random);
        weights = new double[lay.Count, lay.Count];
        for (int i = 0; i < lay.Count; i++)
        {
            for (int k = 0; k < lay.Count; k++)
            {
                weights[i, k] = 1;
            }
        }
    }

    /// <summary>Separates the panels of a lay in place.</summary>
    /// <param name="angles">Angles allowed.</param>
    /// <param name="lay">The lay; its panels are moved.</param>
    /// <param name="size">Size of the part, mm.</param>
    /// <param name="random">Source of the places tried.</param>
    /// <param name="most">Most depths to be read.</param>
    /// <param name="stop">Ends the search.</param>
    /// <returns>True when no overlap is left but what the polish can see to.</returns>
    internal static bool Separated(FreeAngles angles, FreeLay lay, double size, Random random, long most, CancellationToken stop) =>
        new OverlapSearch(angles, lay, size, random).Run(most, stop);

    private bool Run(long most, CancellationToken stop)
    {
        int[] order = [.. Enumerable.Range(0, lay.Count)];
        while (work < most && !stop.IsCancellationRequested)
        {
            random.Shuffle(order);
            foreach (int panel in order)
            {
                if (Cost(panel, lay.X[panel], lay.Y[panel], lay.Angle[panel]) > 0)
                {
                    Move(panel);
                }
            }

            double deepest = Reweigh();
            if (deepest < Settled * size)
            {
                return true;
            }
        }

        return false;
    }

    private void Move(int panel)
    {
        List<(double Cost, double X, double Y, int Angle)> tried =
        [
            (Cost(panel, lay.X[panel], lay.Y[panel], lay.Angle[panel]), lay.X[panel], lay.Y[panel], lay.Angle[panel]),
        ];
        for (int angle = 0; angle < angles.Values.Length; angle++)
        {
            // A part that fills the width exactly may miss it by rounding; wider ones are not laid at this angle.
            double low = angles.Low[angle];
            double high = angles.High[angle];
            if (high < low - (LastStep * size))
            {
                continue;
            }

            high = Math.Max(low, high);

            for (int n = 0; n < Anywhere + Nearby; n++)
            {
                double x = n < Anywhere ? random.NextDouble() * lay.Repeat : lay.X[panel] + (size * 0.1 * ((2 * random.NextDouble()) - 1));
                double y = n < Anywhere
                    ? low + (random.NextDouble() * (high - low))
                    : Math.Clamp(lay.Y[panel] + (size * 0.1 * ((2 * random.NextDouble()) - 1)), low, high);
                tried.Add((Cost(panel, x, y, angle), x, y, angle));
            }
        }

        (double Cost, double X, double Y, int Angle) best = tried[0];
        foreach ((double Cost, double X, double Y, int Angle) start in tried.OrderBy(t => t.Cost).Take(Walked).Append(tried[0]))
        {
            (double Cost, double X, double Y, int Angle) end = Downhill(panel, start);
            best = end.Cost < best.Cost ? end : best;
        }

        (lay.X[panel], lay.Y[panel], lay.Angle[panel]) = (best.X, best.Y, best.Angle);
    }

    private (double Cost, double X, double Y, int Angle) Downhill(int panel, (double Cost, double X, double Y, int Angle) at)
    {
        double low = angles.Low[at.Angle];
        double high = Math.Max(low, angles.High[at.Angle]);
        for (double step = FirstStep * size; step > LastStep * size && at.Cost > 0;)
        {
            (double Cost, double X, double Y, int Angle) best = at;
            foreach ((double dx, double dy) in new[] { (step, 0.0), (-step, 0.0), (0.0, step), (0.0, -step) })
            {
                double x = at.X + dx;
                double y = Math.Clamp(at.Y + dy, low, high);
                double cost = Cost(panel, x, y, at.Angle);
                best = cost < best.Cost ? (cost, x, y, at.Angle) : best;
            }

            (at, step) = best.Cost < at.Cost ? (best, step) : (at, step / 2);
        }

        return at;
    }

    private double Cost(int panel, double x, double y, int angle)
    {
        double cost = angles.Depth(angle, angle, 0, 0, lay.Repeat, self: true);
        for (int other = 0; other < lay.Count; other++)
        {
            if (other != panel)
            {
                cost += weights[panel, other] * angles.Depth(lay.Angle[other], angle, x - lay.X[other], y - lay.Y[other], lay.Repeat);
            }
        }

        work += lay.Count;
        return cost;
    }

    // Weights grow with the share of the deepest overlap.
    private double Reweigh()
    {
        double deepest = 0;
        double[,] depths = new double[lay.Count, lay.Count];
        for (int i = 0; i < lay.Count; i++)
        {
            deepest = Math.Max(deepest, angles.Depth(lay.Angle[i], lay.Angle[i], 0, 0, lay.Repeat, self: true));
            for (int k = 0; k < i; k++)
            {
                depths[i, k] = angles.Depth(lay.Angle[k], lay.Angle[i], lay.X[i] - lay.X[k], lay.Y[i] - lay.Y[k], lay.Repeat);
                deepest = Math.Max(deepest, depths[i, k]);
            }
        }

        for (int i = 0; i < lay.Count && deepest > 0; i++)
        {
            for (int k = 0; k < i; k++)
            {
                weights[i, k] = weights[k, i] = weights[i, k] + (depths[i, k] / deepest);
            }
        }

        return deepest;
    }
}
