using Google.OrTools.Sat;

namespace FeltNest.Layout.Bands;

/// <summary>Chooses the widths of bands that share a run of cloth: a knapsack over the width, with the gap as clearance between neighbours,
/// solved to the optimum of its grid.</summary>
internal static class BandModel
{
    // Densities become whole numbers: panels per mm times this.
    private const double Unit = 1e9;

    // Work units after which the solver gives what it has: far above what a knapsack of a thousand widths takes.
    private const double MostWork = 20;

    /// <summary>The best choices of two to <paramref name="most"/> bands, best first; each later one leaves the widths near to an earlier
    /// one's.</summary>
    /// <param name="widths">What each width gives.</param>
    /// <param name="room">Width to fill, mm.</param>
    /// <param name="gap">Clearance between bands, mm.</param>
    /// <param name="most">Most bands.</param>
    /// <param name="choices">How many choices are wanted.</param>
    /// <param name="apart">How far, mm, a later choice's widths must be from an earlier one's.</param>
    /// <param name="work">Work units of the solver for one choice; where they bring no solution there are no further choices.</param>
    internal static IEnumerable<double[]> Best(
        BandWidths widths, double room, double gap, int most, int choices, double apart, double work = MostWork)
    {
        CpModel model = new();
        List<(double Width, IntVar Count)> items = [];
        for (int i = 1; i < widths.Densities.Length; i++)
        {
            // A width that gives no more than the next smaller one is never needed.
            if (widths.Densities[i] > widths.Densities[i - 1])
            {
                items.Add((i * widths.Spacing, model.NewIntVar(0, most, string.Empty)));
            }
        }

        IntVar[] counts = [.. items.Select(item => item.Count)];
        model.Add(
            LinearExpr.WeightedSum(
                counts, [.. items.Select(item => (long)Math.Ceiling((item.Width + gap) * 1000))]) <= (long)Math.Floor((room + gap) * 1000));
        model.AddLinearConstraint(LinearExpr.Sum(counts), 2, most);
        model.Maximize(
            LinearExpr.WeightedSum(
                counts, [.. items.Select(item => (long)(Unit * widths.Densities[(int)Math.Round(item.Width / widths.Spacing)]))]));
        for (int n = 0; n < choices; n++)
        {
            CpSolver solver = new() { StringParameters = FormattableString.Invariant($"num_workers:1,max_deterministic_time:{work}") };
            if (solver.Solve(model) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                yield break;
            }

            double[] chosen = [.. items.SelectMany(item => Enumerable.Repeat(item.Width, (int)solver.Value(item.Count)))];
            yield return chosen;
            IntVar[] near = [.. items.Where(item => chosen.Any(width => Math.Abs(width - item.Width) < apart)).Select(item => item.Count)];
            model.Add(LinearExpr.Sum(near) <= chosen.Length - 1);
        }
    }
}
