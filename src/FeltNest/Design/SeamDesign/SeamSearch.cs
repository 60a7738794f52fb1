using FeltNest.Geometry;
using FeltNest.Layout.Polish;
using FeltNest.Numerics;

namespace FeltNest.Design.SeamDesign;

/// <summary>Moves a seam to where its panels need the least felt within the limits.</summary>
/// <remarks>A sequential linear program in a box, as in the polish of a layout (R. Fletcher, <i>Practical Methods of Optimization</i>, 2nd
/// ed. 1987, ch. 14), over the numbers of the lay and of the seam together: contacts, selvedges and limits are linear rows. After each
/// step the panel is solved anew and its lay polished alone, so that only the limits can be violated between steps.</remarks>
internal sealed class SeamSearch
{
    // Price of a per cent or mm by which a limit is passed, in mm of pitch: more than any limit was seen to save.
    private const double ViolationPrice = 8;

    // First and least greatest move of a number of the seam, mm; the numbers of the lay may move this many times farther.
    private const double FirstTrust = 0.6;
    private const double LeastTrust = 4e-3;
    private const double LayReach = 4;

    // Gains below this, mm of pitch, end the search when two follow each other: 0.002 % of the felt.
    private const double LeastGain = 2e-3;

    private const int LaySteps = 14;
    private const int Halvings = 2;

    private readonly SeamSolver solver;
    private readonly SeamReader reader;
    private readonly SeamVariables variables;
    private readonly SeamBounds bounds;
    private double scale;

    /// <summary>A search within limits.</summary>
    public SeamSearch(
        SeamVariables variables, SeamSolver solver, SeamReader reader, SeamLimits limits, double leastChart = SeamBounds.LeastChart)
    {
        this.variables = variables;
        this.solver = solver;
        this.reader = reader;
        bounds = new SeamBounds(limits, variables.RadiusMm, leastChart);
    }

    /// <summary>Panels solved so far: the counted work.</summary>
    public int Solves { get; private set; }

    /// <summary>The point of a state and a lay near its own.</summary>
    /// <returns>Null where the panel does not settle near that lay.</returns>
    public SeamTrial? Point(SeamState state, SeamLay lay)
    {
        SeamLook look = reader.At(state.Request, state.Domain, state.Coefficients);
        PoseModel model = lay.Model with { Part = Outline.From(look.Outline) };
        return LayoutPolisher.Polish(model, LaySteps, FirstTrust) is { } at
            ? new SeamTrial(state, look, lay with { Model = model with { Parameters = at } }, bounds.Violation(look)) : null;
    }

    /// <summary>A point met under other limits, judged by these.</summary>
    public SeamTrial Rejudged(SeamTrial point) => point with { Violation = bounds.Violation(point.Look) };

    /// <summary>Moves a seam.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="mostSteps">Most steps.</param>
    /// <param name="stop">Ends the search with the best so far.</param>
    public SeamTrial Run(SeamTrial start, int mostSteps, CancellationToken stop)
    {
        SeamTrial here = start;
        double[] gradient = here.Lay.Model.CostGradient(here.Lay.Model.Parameters);
        scale = 1 / Math.Sqrt(DenseRows.Dot(gradient, gradient));
        double trust = FirstTrust;
        int idle = 0;
        double[][]? tangents = null;
        SeamLook[] slopes = [];
        for (int step = 0; step < mostSteps && trust > LeastTrust && idle < 2 && !stop.IsCancellationRequested; step++)
        {
            if (tangents is null)
            {
                tangents = solver.Tangents(here.State);
                slopes = Slopes(here.State, tangents);
            }

            (SeamTrial? next, double promised) = Next(here, tangents, slopes, trust);
            double gain = next is null ? double.NegativeInfinity : Merit(here) - Merit(next);
            if (next is null || !(gain > 0.05 * promised))
            {
                idle += promised < LeastGain ? 1 : 0;
                trust /= 3;
                continue;
            }

            idle = gain < LeastGain ? idle + 1 : 0;
            trust = Trust(trust, gain / promised);
            (here, tangents) = (next, null);
        }

        return here;
    }

    private static double Trust(double trust, double share) => share switch
    {
        > 0.75 => Math.Min(2 * trust, 2 * FirstTrust),
        < 0.3 => trust / 2,
        _ => trust,
    };

    /// <summary>How what is read off the panel moves with each number of the seam.</summary>
    public SeamLook[] Slopes(SeamState state, double[][] tangents)
    {
        SeamLook[] slopes = new SeamLook[tangents.Length];
        Parallel.For(0, slopes.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, k =>
            slopes[k] = SeamLook.Slope(
                Moved(state, tangents, k, SeamSolver.Step), Moved(state, tangents, k, -SeamSolver.Step), 2 * SeamSolver.Step));
        return slopes;
    }

    private SeamLook Moved(SeamState state, double[][] tangents, int number, double by)
    {
        double[] values = [.. state.Values];
        values[number] += by;
        double[] coefficients = [.. state.Coefficients];
        DenseRows.Add(coefficients, by, tangents[number]);
        (Panel.PanelRequest request, Panel.Domain.SeamDomain domain) = solver.Asked(values);
        return reader.At(request, domain, coefficients);
    }

    private double Merit(SeamTrial point) =>
        (scale * point.Lay.Model.Cost(point.Lay.Model.Parameters)) + (ViolationPrice * point.Violation);

    private (SeamTrial? Next, double Promised) Next(SeamTrial here, double[][] tangents, SeamLook[] slopes, double trust)
    {
        PoseModel model = here.Lay.Model;
        int lay = model.Parameters.Length;
        double reach = 2 * LayReach * trust;
        List<(double[] Factors, double Bound)> rows = [.. SeamRows.Of(model, here.Look.Outline, [.. slopes.Select(s => s.Outline)], reach)];
        rows.AddRange(bounds.Rows(here.Look, slopes, trust).Select(row => ((double[])[.. new double[lay], .. row.Factors], row.Bound)));
        rows.AddRange(AsDesigned(here, slopes.Length));
        (double[] least, double[] most) = Box(here, trust);
        double[] cost = [.. model.CostGradient(model.Parameters).Select(g => g * scale), .. new double[slopes.Length]];
        if (TrustStep.Solve(cost, rows, least, most, ViolationPrice) is not { } change)
        {
            return (null, 0);
        }

        double left = Math.Max(0, rows.Select(row => row.Bound - DenseRows.Dot(row.Factors, change)).DefaultIfEmpty(0).Max());
        double promised = (ViolationPrice * (here.Violation - left)) - DenseRows.Dot(cost, change);
        return promised > 0 ? (Tried(here, tangents, change, trust), promised) : (null, promised);
    }

    // Panels that must lie at the angle they are designed for turn with it, within what the rules leave them.
    private IEnumerable<(double[] Factors, double Bound)> AsDesigned(SeamTrial here, int numbers)
    {
        if (Warp(here.Lay) is not { } tilt)
        {
            yield break;
        }

        PoseModel model = here.Lay.Model;
        int lay = model.Parameters.Length;
        foreach ((double side, double bound) in new[]
        {
            (1.0, model.Least[tilt] - model.Parameters[tilt]), (-1.0, model.Parameters[tilt] - model.Most[tilt]),
        })
        {
            double[] factors = new double[lay + numbers];
            factors[tilt] = side * variables.RadiusMm;
            factors[^1] = -side;
            yield return (factors, variables.RadiusMm * bound);
        }
    }

    private int? Warp(SeamLay lay) => variables.TurnsWarp ? lay.Warp : null;

    // The limits of the tilt go with the angle that the panel is now designed for.
    private (double[] Least, double[] Most) Tilts(SeamTrial here, double[] values)
    {
        double[] least = [.. here.Lay.Model.Least];
        double[] most = [.. here.Lay.Model.Most];
        if (Warp(here.Lay) is { } tilt)
        {
            double turn = (values[^1] - here.State.Values[^1]) / variables.RadiusMm;
            (least[tilt], most[tilt]) = (least[tilt] + turn, most[tilt] + turn);
        }

        return (least, most);
    }

    private SeamTrial? Tried(SeamTrial here, double[][] tangents, double[] change, double trust)
    {
        int lay = here.Lay.Model.Parameters.Length;
        double[] values = [.. here.State.Values.Select((value, k) => value + change[lay + k])];
        Solves++;
        if (solver.Followed(here.State, tangents, values, Halvings) is not { } state)
        {
            return null;
        }

        SeamLook look = reader.At(state.Request, state.Domain, state.Coefficients);
        (double[] least, double[] most) = Tilts(here, values);
        PoseModel model = here.Lay.Model with
        {
            Part = Outline.From(look.Outline),
            Parameters =
            [
                .. here.Lay.Model.Parameters.Select((value, i) => Math.Clamp(value + change[i], least[i], most[i])),
            ],
            Least = least,
            Most = most,
        };
        return LayoutPolisher.Polish(model, LaySteps, trust) is { } at
            ? new SeamTrial(state, look, here.Lay with { Model = model with { Parameters = at } }, bounds.Violation(look)) : null;
    }

    private (double[] Least, double[] Most) Box(SeamTrial here, double trust)
    {
        PoseModel model = here.Lay.Model;
        double[] at = model.Parameters;
        int count = at.Length + here.State.Values.Length;
        double[] least = new double[count];
        double[] most = new double[count];
        double radius = here.Look.Outline.Max(p => p.Length);
        for (int i = 0; i < count; i++)
        {
            double reach = trust;
            if (i < at.Length)
            {
                reach = model.IsAngle[i] ? LayReach * trust / radius : LayReach * trust;
                (least[i], most[i]) = i == Warp(here.Lay)
                    ? (-reach, reach) : (Math.Max(-reach, model.Least[i] - at[i]), Math.Min(reach, model.Most[i] - at[i]));
            }
            else
            {
                (least[i], most[i]) = (-reach, reach);
            }
        }

        (double narrow, double wide) = variables.Waists();
        double waist = here.State.Values[0];
        (least[at.Length], most[at.Length]) = (Math.Max(-trust, Math.Min(0, narrow - waist)), Math.Min(trust, Math.Max(0, wide - waist)));
        return (least, most);
    }
}
