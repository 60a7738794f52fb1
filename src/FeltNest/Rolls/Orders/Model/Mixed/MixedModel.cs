using Google.OrTools.LinearSolver;

namespace FeltNest.Rolls.Orders.Model.Mixed;

/// <summary>A mixed-integer model that is solved for one aim after the other. One thread and a limit on counted nodes: the same question
/// gives the same answer.</summary>
internal sealed class MixedModel : IDisposable
{
    // Nodes of the search tree for one unit of effort: so many, and no more than so many times the variables, as a node of a great model is
    // more work.
    private const long NodesPerEffort = 2000;
    private const long WorkPerEffort = 200_000;
    private const long LeastNodes = 20;

    // Aims this near to their bound are reached, as a share: a hundredth of a per cent, below what any price is known to.
    internal const double RelativeGap = 1e-4;

    // Branching by what was learned: trying branches beforehand took most of the time on thirty orders. Few rounds of cuts: later ones
    // moved the bound by a thousandth.
    private const string Search =
        "randomization/randomseedshift = 0\nbranching/pscost/priority = 100000\nseparating/maxroundsroot = 3\n" + OwnInterrupts;

    // The solver would catch an interrupt while it works and keep it from the program: the search would end early and the run go on as if
    // nothing had been asked.
    private const string OwnInterrupts = "misc/catchctrlc = FALSE\n";

    private readonly Solver solver = Solver.CreateSolver("SCIP") ?? throw new InvalidOperationException("the solver SCIP is not there");
    private readonly List<Variable> variables = [];
    private readonly List<(Constraint Row, LinearSum Sum)> unwritten = [];
    private readonly int effort;
    private readonly CancellationToken building;
    private double[]? values;
    private IReadOnlyList<(Unknown Variable, double Value)> hint = [];

    /// <summary>An empty model.</summary>
    /// <param name="effort">Counted work, 1 or more.</param>
    /// <param name="stop">Ends the building of the model: whoever adds to it or hands it to the solver is told by an exception.</param>
    public MixedModel(int effort, CancellationToken stop = default) => (this.effort, building) = (effort, stop);

    /// <summary>A whole number.</summary>
    public Unknown Whole(double low, double high) => Kept(solver.MakeIntVar(low, high, string.Empty));

    /// <summary>0 or 1.</summary>
    public Unknown Choice() => Kept(solver.MakeBoolVar(string.Empty));

    /// <summary>Any number of at least 0.</summary>
    public Unknown Number(double high = double.PositiveInfinity) => Kept(solver.MakeNumVar(0, high, string.Empty));

    /// <summary>Keeps a sum at or below a number.</summary>
    public void AtMost(LinearSum sum, double most) => Row(sum, double.NegativeInfinity, most);

    /// <summary>Keeps a sum at or above a number.</summary>
    public void AtLeast(LinearSum sum, double least) => Row(sum, least, double.PositiveInfinity);

    /// <summary>Keeps a sum at a number.</summary>
    public void Equal(LinearSum sum, double value) => Row(sum, value, value);

    /// <summary>Values of some variables, each once, where the first search is to begin.</summary>
    public void BeginAt(IReadOnlyList<(Unknown Variable, double Value)> start) => hint = start;

    /// <summary>Value of a variable in the best solution so far.</summary>
    public double ValueOf(Unknown variable) => values![variable.Index];

    /// <summary>Value of a variable in the best solution so far, as the whole number it is.</summary>
    public int WholeOf(Unknown variable) => (int)Math.Round(ValueOf(variable));

    /// <summary>Value of a sum in the best solution so far.</summary>
    public double ValueOf(LinearSum sum) => sum.Constant + sum.Terms.Sum(t => t.Factor * ValueOf(t.Variable));

    /// <summary>Makes a sum as small as can be, beginning at the best solution so far.</summary>
    /// <returns>What was reached and what nothing can be below; null where no solution was found.</returns>
    public ModelReach? Minimise(LinearSum aim, CancellationToken stop) => Minimise(aim, 1, stop);

    /// <summary>The same with a share of the nodes that the effort allows.</summary>
    public ModelReach? Minimise(LinearSum aim, double share, CancellationToken stop) =>
        Solved(
            aim, Math.Max(LeastNodes, (long)(share * Math.Min(NodesPerEffort * effort, WorkPerEffort * effort / variables.Count))), stop);

    /// <summary>Looks for a better solution with some variables held at the values they have.</summary>
    /// <param name="aim">The sum to make small.</param>
    /// <param name="held">Whole numbers that keep their value.</param>
    /// <param name="most">Most nodes of the search tree.</param>
    /// <param name="stop">Ends the search.</param>
    /// <returns>What was reached, never more than before.</returns>
    public double Improve(LinearSum aim, IEnumerable<Unknown> held, long most, CancellationToken stop)
    {
        double before = ValueOf(aim);
        double[] had = values!;
        List<(Variable Variable, double Low, double High)> bounds = [];
        foreach (Unknown unknown in held)
        {
            Variable variable = unknown.Variable;
            bounds.Add((variable, variable.Lb(), variable.Ub()));
            double value = Math.Round(had[unknown.Index]);
            variable.SetBounds(value, value);
        }

        ModelReach? reach = Solved(aim, most, stop);
        foreach ((Variable variable, double low, double high) in bounds)
        {
            variable.SetBounds(low, high);
        }

        if (reach is null || ValueOf(aim) > before)
        {
            values = had;
        }

        return ValueOf(aim);
    }

    private ModelReach? Solved(LinearSum aim, long most, CancellationToken stop)
    {
        Write();
        using Objective objective = solver.Objective();
        Aim(objective, aim);
        GiveHint();
        solver.SetSolverSpecificParametersAsString(FormattableString.Invariant($"limits/totalnodes = {most}\n{Search}"));
        using MPSolverParameters parameters = new();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, RelativeGap);
        if (stop.IsCancellationRequested)
        {
            return Last(aim);
        }

        Solver.ResultStatus status;
        using (stop.Register(() => solver.InterruptSolve()))
        {
            status = solver.Solve(parameters);
        }

        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
        {
            return Last(aim);
        }

        double[] found = [.. variables.Select(v => v.SolutionValue())];
        double bound = objective.BestBound();
        values = found;
        return new ModelReach
        {
            Value = ValueOf(aim),
            Bound = bound,
            Proved = status == Solver.ResultStatus.OPTIMAL,
        };
    }

    private static void Aim(Objective objective, LinearSum aim)
    {
        objective.Clear();
        foreach ((Unknown variable, double factor) in aim.Gathered())
        {
            objective.SetCoefficient(variable.Variable, factor);
        }

        objective.SetOffset(aim.Constant);
        objective.SetMinimization();
    }

    // The solver begins at the last solution, or at what was handed over.
    private void GiveHint()
    {
        if (values is not null)
        {
            solver.SetHint([.. variables.Take(values.Length)], values);
        }
        else if (hint.Count > 0)
        {
            solver.SetHint([.. hint.Select(h => h.Variable.Variable)], [.. hint.Select(h => h.Value)]);
        }
    }

    // What the last solution is worth, where it has a value for every variable.
    private ModelReach? Last(LinearSum aim) =>
        values?.Length == variables.Count ? new ModelReach { Value = ValueOf(aim), Bound = double.NegativeInfinity, Proved = false } : null;

    /// <inheritdoc/>
    public void Dispose() => solver.Dispose();

    private Unknown Kept(Variable variable)
    {
        variables.Add(variable);
        return new Unknown(variable, variables.Count - 1);
    }

    private void Row(LinearSum sum, double low, double high)
    {
        building.ThrowIfCancellationRequested();
        unwritten.Add((solver.MakeConstraint(low - sum.Constant, high - sum.Constant), sum));
    }

    // Rows handed over whole go to the solver in the order of a hash table of addresses, which is another one in every run, and its search
    // follows that order. So it is first given the rows empty, and then every factor by itself, in the order of the model.
    private void Write()
    {
        if (unwritten.Count == 0)
        {
            return;
        }

        solver.SetSolverSpecificParametersAsString("limits/totalnodes = 0\npresolving/maxrounds = 0\n" + OwnInterrupts);
        solver.Solve();
        foreach ((Constraint row, LinearSum sum) in unwritten)
        {
            building.ThrowIfCancellationRequested();
            foreach ((Unknown variable, double factor) in sum.Gathered())
            {
                row.SetCoefficient(variable.Variable, factor);
            }
        }

        unwritten.Clear();
    }
}
