using Google.OrTools.LinearSolver;

namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Solves the rows of a master as a linear program, again and again as columns come: CLP keeps its
/// basis from one program to the next.</summary>
internal sealed class MasterSolver : IDisposable
{
    private readonly Solver solver = Solver.CreateSolver("CLP") ?? throw new InvalidOperationException("the solver CLP is not there");
    private readonly MasterRows master;
    private readonly List<Constraint> rows = [];
    private readonly List<Variable> columns = [];

    /// <summary>A solver of some rows.</summary>
    public MasterSolver(MasterRows master)
    {
        this.master = master;
        foreach ((double low, double high) in master.Rows)
        {
            rows.Add(solver.MakeConstraint(low, high, string.Empty));
        }

        solver.Objective().SetMinimization();
    }

    /// <summary>Solves the program with all columns there are.</summary>
    /// <returns>Prices of the rows, those of the wrong sign set to none; values of the columns; null where it was stopped.</returns>
    public (double[] Duals, double[] Values)? Solve()
    {
        Objective objective = solver.Objective();
        for (int j = columns.Count; j < master.Columns.Count; j++)
        {
            MasterColumn column = master.Columns[j];
            Variable variable = solver.MakeNumVar(0, column.Most, string.Empty);
            objective.SetCoefficient(variable, column.Cost);
            foreach ((int row, double factor) in column.Entries)
            {
                rows[row].SetCoefficient(variable, rows[row].GetCoefficient(variable) + factor);
            }

            columns.Add(variable);
        }

        if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
        {
            return null;
        }

        double[] duals = new double[rows.Count];
        for (int i = 0; i < duals.Length; i++)
        {
            (double low, double high) = master.Rows[i];
            double dual = rows[i].DualValue();
            dual = double.IsNegativeInfinity(low) ? Math.Min(0, dual) : dual;
            duals[i] = double.IsPositiveInfinity(high) ? Math.Max(0, dual) : dual;
        }

        return (duals, [.. columns.Select(c => c.SolutionValue())]);
    }

    /// <summary>Keeps a column at a value or below and above two.</summary>
    public void Hold(int column, double low, double high) => columns[column].SetBounds(low, high);

    /// <summary>Keeps a row at or below a value.</summary>
    public void Limit(int row, double high) => rows[row].SetUb(high);

    /// <inheritdoc/>
    public void Dispose() => solver.Dispose();
}
