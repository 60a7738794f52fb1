using CsCheck;
using FeltNest.Numerics;
using Google.OrTools.LinearSolver;
using Xunit;

namespace FeltNest.Tests.Numerics;

/// <summary>The small linear program against a general solver (GLOP of Google OR-Tools) and a program worked by hand.</summary>
public sealed class VertexProgramTests
{
    [Fact]
    public void A_program_worked_by_hand_ends_in_its_corner()
    {
        // Least 2x + 3y with x + y >= 4 and x >= 1 within [0, 10]: x as great as need be, so (4, 0) for 8.
        List<(double[], double)> limits = [([1, 1], 4), ([1, 0], 1)];

        double[] end = VertexProgram.Solve([2, 3], limits, [0, 0], [10, 10], 100)!;

        Assert.Equal(4, end[0], 1e-12);
        Assert.Equal(0, end[1], 1e-12);
    }

    [Fact]
    public void Limits_that_no_step_can_keep_share_the_slack()
    {
        // x >= 5 is out of reach of [0, 2]: the step goes as far as it may, and the slack pays for 3.
        double[] end = VertexProgram.Solve([1], [([1], 5)], [0], [2], 100)!;

        Assert.Equal(2, end[0], 1e-12);
    }

    [Fact]
    public void A_slack_cheaper_than_the_way_is_taken()
    {
        // A mm of x costs 3, a mm of slack 2: nothing moves.
        double[] end = VertexProgram.Solve([3], [([1], 1)], [0], [2], 2)!;

        Assert.Equal(0, end[0], 1e-12);
    }

    [Fact]
    public void Random_programs_cost_what_the_general_solver_says()
    {
        Gen<double> number = Gen.Int[-1000, 1000].Select(i => i / 1000.0);
        Gen.Int[1, 6].SelectMany(n => Gen.Select(
                number.Array[n], Gen.Select(number.Array[n], number).List[0, 60], Gen.Int[1, 200].Select(i => i / 100.0).Array[n],
                Gen.Int[1, 400].Select(i => i / 10.0)))
            .Sample((cost, limits, reach, price) =>
            {
                double[] least = [.. reach.Select(r => -r)];

                double[] end = VertexProgram.Solve(cost, limits, least, reach, price)!;

                Assert.All(end.Zip(reach), pair => Assert.InRange(pair.First, -pair.Second - 1e-9, pair.Second + 1e-9));
                Assert.Equal(ByGlop(cost, limits, reach, price), Cost(cost, limits, end, price), 1e-6);
            });
    }

    [Fact]
    public void A_hundred_limits_that_tie_end_all_the_same()
    {
        // Sides of a regular hundred-gon round the origin, each at distance one: least x is where the first side crosses y = 0.
        List<(double[], double)> limits =
        [
            .. Enumerable.Range(0, 100).Select(i => (new[] { Math.Cos(Math.Tau * i / 100), Math.Sin(Math.Tau * i / 100) }, -1.0)),
        ];

        double[] end = VertexProgram.Solve([1, 0], limits, [-5, -5], [5, 5], 100)!;

        Assert.Equal(-1, end[0], 1e-9);
    }

    private static double Cost(double[] cost, List<(double[] Factors, double Bound)> limits, double[] at, double price)
    {
        double slack = limits.Select(l => l.Bound - l.Factors.Zip(at, (f, x) => f * x).Sum()).Append(0).Max();
        return cost.Zip(at, (c, x) => c * x).Sum() + (price * slack);
    }

    private static double ByGlop(double[] cost, List<(double[] Factors, double Bound)> limits, double[] reach, double price)
    {
        using Solver solver = Solver.CreateSolver("GLOP");
        Variable[] x = [.. reach.Select(r => solver.MakeNumVar(-r, r, string.Empty))];
        Variable slack = solver.MakeNumVar(0, double.PositiveInfinity, string.Empty);
        LinearExpr total = slack * price;
        for (int i = 0; i < x.Length; i++)
        {
            total += x[i] * cost[i];
        }

        foreach ((double[] factors, double bound) in limits)
        {
            LinearExpr sum = slack + 0;
            for (int i = 0; i < x.Length; i++)
            {
                sum += x[i] * factors[i];
            }

            solver.Add(sum >= bound);
        }

        solver.Minimize(total);
        Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
        return solver.Objective().Value();
    }
}
