using FeltNest.Numerics;

namespace FeltNest.Layout.Polish;

/// <summary>Makes a lay as short as its parameters allow: pitch, tilts, steps and phases together, on exact distances.</summary>
/// <remarks>A sequential linear program: around the present lay every near pair of a corner and an edge gives one linear limit, a step is
/// taken within a box that shrinks when the step keeps less than it promised. R. E. Griffith and R. A. Stewart, <i>A nonlinear programming
/// technique for the optimization of continuous processing systems</i>, Management Science 7, 1961; with the box as a trust region and an
/// exact penalty as in R. Fletcher,
/// <i>Practical Methods of Optimization</i>, 2nd ed. 1987, ch. 14.</remarks>
internal sealed class LayoutPolisher
{
    // Price of one mm of violated distance against one mm of repeat, chosen far above the few mm by which a mm of gap can lengthen a
    // repeat; the check has the last word.
    private const double ViolationPrice = 40;

    // Steps smaller than this, in mm, change nothing that matters; the polish ends there.
    private const double LeastTrust = 1e-8;

    // A lay that violates its gap by more than this share of the part's radius has not converged and is not worth restoring.
    private const double FarFromSettled = 1e-3;

    // Limits of one step, at most. A ball's panel has some thousands; combs that slide into each other by tenths of a millimetre can have
    // millions, which no memory holds.
    private const int MostLimits = 30_000;

    // Turned outlines kept for reuse: several tilts of a few steps; old ones are never asked for again.
    private const int MostPosed = 64;

    private readonly PoseModel model;
    private readonly bool isNear;
    private readonly double radius;
    private readonly double tolerance;
    private readonly Dictionary<double, PosedOutline> posed = [];
    private bool isCrowded;

    private LayoutPolisher(PoseModel model, bool isNear)
    {
        this.model = model;
        this.isNear = isNear;
        radius = model.Part.Points.Max(p => p.Length);

        // What counts as kept: rounding of a few sums of the part's size, a ten-thousandth of what the check allows.
        tolerance = 1e-10 * radius;
    }

    /// <summary>Polishes a model.</summary>
    /// <param name="model">Start; its panels may overlap by a little.</param>
    /// <param name="mostSteps">Most linear programs to solve.</param>
    /// <param name="trust">First size of the box, mm.</param>
    /// <param name="isNear">Whether the start is near its end already: then steps are solved the quick way. From afar ties between limits
    /// lead the two ways to different ends, and the solver for large programs was seen to find the better one.</param>
    /// <returns>Parameters that keep every distance, or null when none were found near the start.</returns>
    internal static double[]? Polish(PoseModel model, int mostSteps, double trust, bool isNear = false)
    {
        double factor = PoseScale.Of(model.Part.Points.Max(p => p.Length));
        PoseModel scaled = factor == 1 ? model : PoseScale.Scaled(model, factor);
        return new LayoutPolisher(scaled, isNear).Run(mostSteps, trust * factor) is { } end
            ? PoseScale.Scaled(model, end, 1 / factor)
            : null;
    }

    private double[]? Run(int mostSteps, double trust)
    {
        double[] at = [.. model.Parameters];
        double[]? best = null;
        List<PanelPair> pairs = Pairs(at, trust);
        double violation = Violation(at, pairs);
        double cost = model.Cost(at);
        double scale = 1 / Norm(model.CostGradient(at));
        for (int step = 0; step < mostSteps && trust > LeastTrust && !isCrowded; step++)
        {
            if (Step(at, pairs, trust, scale) is not { } change)
            {
                trust /= 4;
                continue;
            }

            double[] next = [.. at.Zip(change, (a, b) => a + b)];
            double nextViolation = Violation(next, pairs);
            double nextCost = model.Cost(next);
            double gain = (scale * (cost - nextCost)) + (ViolationPrice * (violation - nextViolation));
            double largest = Largest(change);
            if (!(gain > 0))
            {
                trust = Math.Min(trust, largest) / 4;
                continue;
            }

            bool small = gain < 1e-3 * trust && violation <= tolerance;
            (at, violation, cost) = (next, nextViolation, nextCost);
            pairs = Pairs(at, trust);
            best = violation <= tolerance ? at : best;
            trust = small || nextViolation > 0.25 * largest ? trust / 2 : trust;
        }

        return Settled(best, at);
    }

    // The last step may end a hair inside the gap: a few steps that only restore it.
    private double[]? Settled(double[]? best, double[] at)
    {
        double[] restored = at;
        for (int i = 0; i < 6; i++)
        {
            double violation = Violation(restored, Pairs(restored, 0));
            if (violation <= tolerance)
            {
                return best is null || model.Cost(restored) < model.Cost(best) ? restored : best;
            }

            double trust = Math.Max(10 * violation, 1e-6);
            if (violation > FarFromSettled * radius || Step(restored, Pairs(restored, trust), trust, 1e-6) is not { } change)
            {
                break;
            }

            restored = [.. restored.Zip(change, (a, b) => a + b)];
        }

        return best;
    }

    private double[]? Step(double[] at, List<PanelPair> pairs, double trust, double costScale)
    {
        List<(double[], double)> limits = [];
        List<Contact> contacts = [];
        (double[] least, double[] most) = Box(at, trust);
        double[] factors = new double[at.Length];
        foreach (PanelPair pair in pairs)
        {
            contacts.Clear();
            double margin = model.Gap + Motion(pair, trust);
            PosedOutline first = Posed(model.Panels[pair.First].Angle.At(at));
            PosedOutline second = Posed(model.Panels[pair.Second].Angle.At(at));
            ContactFinder.Find(first, second, pair.OffsetX.At(at), pair.OffsetY.At(at), margin, contacts);
            foreach (Contact c in contacts)
            {
                ContactLimit.Factors(model, pair, c, factors);
                double bound = model.Gap - c.Distance;
                if (CanFail(factors, bound, least, most))
                {
                    limits.Add(([.. factors], bound));
                }
            }

            if (limits.Count > MostLimits)
            {
                isCrowded = true;
                return null;
            }
        }

        AddEdges(at, trust, limits);
        double[] cost = [.. model.CostGradient(at).Select(g => g * costScale)];
        return isNear
            ? VertexProgram.Solve(cost, limits, least, most, ViolationPrice)
            : TrustStep.Solve(cost, limits, least, most, ViolationPrice);
    }

    // A limit that no step within the box can break tells the linear program nothing.
    private static bool CanFail(double[] factors, double bound, double[] least, double[] most)
    {
        double reach = 0;
        for (int i = 0; i < factors.Length; i++)
        {
            reach += factors[i] * (factors[i] > 0 ? least[i] : most[i]);
        }

        return reach < bound;
    }

    // How far each parameter may move.
    private (double[] Least, double[] Most) Box(double[] at, double trust)
    {
        double[] least = new double[at.Length];
        double[] most = new double[at.Length];
        for (int i = 0; i < at.Length; i++)
        {
            double reach = model.IsAngle[i] ? trust / radius : trust;
            least[i] = Math.Max(-reach, model.Least[i] - at[i]);
            most[i] = Math.Min(reach, model.Most[i] - at[i]);
            if (least[i] > most[i])
            {
                least[i] = most[i] = 0;
            }
        }

        return (least, most);
    }

    private void AddEdges(double[] at, double trust, List<(double[], double)> limits)
    {
        foreach (PanelPose panel in model.Panels)
        {
            if (model.Limits(panel) is not (var lower, var upper))
            {
                continue;
            }

            PosedOutline outline = Posed(panel.Angle.At(at));
            double y = panel.Y.At(at);
            for (int i = 0; i < outline.Y.Length; i++)
            {
                foreach ((double room, double side) in new[] { (upper - y - outline.Y[i], -1.0), (y + outline.Y[i] - lower, 1.0) })
                {
                    if (room < 4 * trust)
                    {
                        double[] factors = new double[at.Length];
                        panel.Y.AddTo(factors, side);
                        panel.Angle.AddTo(factors, side * outline.X[i]);
                        limits.Add((factors, -room));
                    }
                }
            }
        }
    }

    private double Violation(double[] at, List<PanelPair> pairs)
    {
        double worst = 0;
        List<Contact> contacts = [];
        foreach (PanelPair pair in pairs)
        {
            contacts.Clear();
            ContactFinder.Find(
                Posed(model.Panels[pair.First].Angle.At(at)), Posed(model.Panels[pair.Second].Angle.At(at)),
                pair.OffsetX.At(at), pair.OffsetY.At(at), model.Gap, contacts);
            foreach (Contact c in contacts)
            {
                worst = Math.Max(worst, model.Gap - c.Distance);
            }
        }

        foreach (PanelPose panel in model.Panels)
        {
            if (model.Limits(panel) is (var lower, var upper))
            {
                PosedOutline outline = Posed(panel.Angle.At(at));
                double y = panel.Y.At(at);
                worst = Math.Max(worst, Math.Max(y + outline.MaxY - upper, lower - y - outline.MinY));
            }
        }

        return worst;
    }

    // Pairs that may meet within a step; the farthest of them move by a few steps against each other.
    private List<PanelPair> Pairs(double[] at, double trust) => PairList.Of(model, at, (2 * radius) + model.Gap + (8 * trust));

    // How far two panels can move against each other while every parameter moves by at most the trust.
    private double Motion(PanelPair pair, double trust)
    {
        double along = pair.OffsetX.Terms.Sum(t => Math.Abs(t.Factor));
        double across = pair.OffsetY.Terms.Sum(t => Math.Abs(t.Factor));
        double turning = model.Panels[pair.First].Angle.Terms.Length + model.Panels[pair.Second].Angle.Terms.Length;
        return trust * (Math.Sqrt((along * along) + (across * across)) + turning);
    }

    private PosedOutline Posed(double angle)
    {
        if (!posed.TryGetValue(angle, out PosedOutline? outline))
        {
            if (posed.Count >= MostPosed)
            {
                posed.Clear();
            }

            posed[angle] = outline = new PosedOutline(model.Part, angle);
        }

        return outline;
    }

    private double Largest(double[] change)
    {
        double largest = 0;
        for (int i = 0; i < change.Length; i++)
        {
            largest = Math.Max(largest, Math.Abs(change[i]) * (model.IsAngle[i] ? radius : 1));
        }

        return largest;
    }

    private static double Norm(double[] v) => Math.Sqrt(v.Sum(x => x * x));
}
