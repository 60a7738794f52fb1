using Google.OrTools.Sat;

namespace FeltNest.Cost.Families;

/// <summary>Chooses widths to stock and the width of each ball: a model of whole numbers, solved to its proved optimum.</summary>
/// <remarks>The uncapacitated facility location problem (J. Krarup, P. M. Pruzan, "The simple plant location problem: survey and
/// synthesis",
/// <em>European Journal of Operational Research</em> 12 (1983) 36-81; from memory), with a limit on the number of places: widths are the
/// places, balls the customers. All figures are whole, so bound and optimum are exact.</remarks>
internal static class StockModel
{
    // Work units after which the solver gives what it has: some minutes; thirty balls on a thousand widths take far less.
    private const double MostWork = 100;

    /// <summary>The choice that costs least, or null where no choice cuts every ball.</summary>
    /// <param name="question">What may be chosen.</param>
    /// <param name="work">Work units of the solver.</param>
    /// <exception cref="NoAnswerException">The work ran out before any choice was found.</exception>
    public static StockAnswer? Solve(StockQuestion question, double work = MostWork)
    {
        CpModel model = new();
        BoolVar[] stocked = [.. question.WidthCosts.Select(_ => model.NewBoolVar(string.Empty))];
        BoolVar?[][] cut = [.. question.BallCosts.Select(costs => Cut(model, costs, stocked))];
        if (cut.Any(ball => ball.All(width => width is null)))
        {
            return null;
        }

        if (question.MostWidths is { } most)
        {
            model.Add(LinearExpr.Sum(stocked) <= most);
        }

        List<(BoolVar Taken, long Cost)> terms = [.. stocked.Zip(question.WidthCosts)];
        foreach ((BoolVar?[] ball, IReadOnlyList<long?> costs) in cut.Zip(question.BallCosts))
        {
            terms.AddRange(ball.Zip(costs).Where(pair => pair.First is not null).Select(pair => (pair.First!, pair.Second!.Value)));
        }

        model.Minimize(LinearExpr.WeightedSum(terms.Select(term => term.Taken), terms.Select(term => term.Cost)));
        CpSolver solver = new()
        {
            StringParameters = FormattableString.Invariant($"num_workers:1,linearization_level:2,max_deterministic_time:{work}"),
        };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => Read(solver, cut),
            CpSolverStatus.Infeasible => null,
            _ => throw new NoAnswerException("no choice of widths was found within the work allowed: ask for fewer widths"),
        };
    }

    // A ball is cut on exactly one width, and only where that is stocked.
    private static BoolVar?[] Cut(CpModel model, IReadOnlyList<long?> costs, BoolVar[] stocked)
    {
        BoolVar?[] cut = [.. costs.Select(cost => cost is null ? null : model.NewBoolVar(string.Empty))];
        model.AddExactlyOne(cut.OfType<BoolVar>());
        for (int width = 0; width < cut.Length; width++)
        {
            if (cut[width] is { } here)
            {
                model.AddImplication(here, stocked[width]);
            }
        }

        return cut;
    }

    private static StockAnswer Read(CpSolver solver, BoolVar?[][] cut) => new()
    {
        WidthOf = [.. cut.Select(ball => Array.FindIndex(ball, here => here is not null && solver.BooleanValue(here)))],
        Total = (long)Math.Round(solver.ObjectiveValue),
        Bound = (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6),
    };
}
