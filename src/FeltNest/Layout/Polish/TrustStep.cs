using Google.OrTools.LinearSolver;

namespace FeltNest.Layout.Polish;

/// <summary>One linear step: least cost within a box, keeping linear limits, with one slack shared by all so that a step always
/// exists.</summary>
internal static class TrustStep
{
    // Many corners of a regular outline touch at once, and on such ties the simplex method has been seen to go round for ever: its work is
    // counted, and a step that needs more is taken for none.
    private const string Limits = "max_number_of_iterations:4000 max_deterministic_time:2";

    /// <summary>Solves for the change of the parameters.</summary>
    /// <param name="cost">Gradient of the cost.</param>
    /// <param name="limits">Rows: factors times change must reach at least the bound.</param>
    /// <param name="least">Least change of each parameter.</param>
    /// <param name="most">Greatest change.</param>
    /// <param name="slackPrice">Cost of one mm of slack.</param>
    /// <returns>The change, or null when the solver gives none.</returns>
    internal static double[]? Solve(
        double[] cost, IReadOnlyList<(double[] Factors, double Bound)> limits, double[] least, double[] most, double slackPrice)
    {

        using Solver solver = Solver.CreateSolver("GLOP");
        solver.SetSolverSpecificParametersAsString(Limits);
        Variable[] change = new Variable[cost.Length];
        Objective objective = solver.Objective();
        for (int i = 0; i < cost.Length; i++)
        {
            change[i] = solver.MakeNumVar(least[i], most[i], string.Empty);
            objective.SetCoefficient(change[i], cost[i]);
        }

        Variable slack = solver.MakeNumVar(0, double.PositiveInfinity, string.Empty);
        objective.SetCoefficient(slack, slackPrice);
        objective.SetMinimization();
        foreach ((double[] factors, double bound) in limits)
        {
            Constraint row = solver.MakeConstraint(bound, double.PositiveInfinity);
            row.SetCoefficient(slack, 1);
            for (int i = 0; i < factors.Length; i++)
            {
                if (factors[i] != 0)
                {
                    row.SetCoefficient(change[i], factors[i]);
                }
            }
        }

        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? Array.ConvertAll(change, v => v.SolutionValue()) : null;
    }
}
