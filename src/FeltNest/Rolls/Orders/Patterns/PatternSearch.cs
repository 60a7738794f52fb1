namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Finds the patterns a linear master wants, and what no plan can cost less than.</summary>
/// <remarks>
/// The bound is the Lagrangian one of the present prices: their worth of the right sides, and for each column, and for each kind of roll by
/// its best pattern, what it would bring below nothing times the most there can be of it. It holds for any prices of the right sign, so it
/// holds when pricing stops early (weak duality; J. Desrosiers and M. Luebbecke, "A primer in column generation", 2005, from memory).
/// </remarks>
internal sealed class PatternSearch
{
    private readonly PatternMaster master;
    private readonly FeltKinds felt;
    private readonly MasterSolver solver;
    private readonly (FeltKind[] Kinds, PatternPricing Pricing)[] pricing;

    /// <summary>A search over a master.</summary>
    public PatternSearch(OrderRequest question, FeltKinds felt, PatternMaster master, MasterSolver solver)
    {
        this.solver = solver;
        (this.felt, this.master) = (felt, master);
        pricing =
        [
            .. felt.CutAlike.Select(kinds => (kinds, new PatternPricing(question, kinds, master.CostShare))),
        ];
        foreach ((FeltKind[] kinds, PatternPricing own) in pricing)
        {
            foreach (FeltKind kind in kinds)
            {
                Begin(question, kind, own);
            }
        }
    }

    /// <summary>What no plan can be below.</summary>
    public double Bound { get; private set; } = double.NegativeInfinity;

    /// <summary>Values of the columns in the last program.</summary>
    public IReadOnlyList<double> Values { get; private set; } = [];

    /// <summary>Prices of the rows in the last program.</summary>
    public IReadOnlyList<double> Duals { get; private set; } = [];

    /// <summary>Prices patterns until none is worth its cost, the bound is as near as asked, or so many rounds are made.</summary>
    public void Run(int rounds, double gap, Action<int, double>? told, CancellationToken stop)
    {
        for (int round = 1; round <= rounds && !stop.IsCancellationRequested; round++)
        {
            if (solver.Solve() is not { } solved)
            {
                return;
            }

            (Duals, Values) = solved;
            double value = master.Rows.Columns.Select((c, j) => c.Cost * Values[j]).Sum();
            (RollPattern? Pattern, double Reduced)[] priced = Priced(stop);
            if (stop.IsCancellationRequested)
            {
                return;
            }

            Bound = Math.Max(Bound, Lagrangian(priced));
            told?.Invoke(round, Bound);
            if (value - Bound <= gap * Math.Abs(value))
            {
                return;
            }

            foreach ((RollPattern? pattern, _) in priced)
            {
                if (pattern is not null)
                {
                    master.Add(pattern);
                }
            }
        }
    }

    // The best pattern of every kind at the present prices; unfinished where it is stopped.
    private (RollPattern? Pattern, double Reduced)[] Priced(CancellationToken stop)
    {
        (RollPattern? Pattern, double Reduced)[] priced = new (RollPattern?, double)[felt.All.Count];
        Parallel.ForEach(pricing, group =>
        {
            if (stop.IsCancellationRequested)
            {
                return;
            }

            (FeltKind[] kinds, PatternPricing own) = group;
            (RollPattern? Pattern, double Reduced)[] found = own.Best(
                master.ValuesOf(kinds[0], Duals).Values, [.. kinds.Select(k => master.ValuesOf(k, Duals).RollPrice)]);
            for (int k = 0; k < kinds.Length; k++)
            {
                priced[kinds[k].Index] = found[k];
            }
        });
        return priced;
    }

    private double Lagrangian((RollPattern? Pattern, double Reduced)[] priced)
    {
        double bound = 0;
        for (int i = 0; i < Duals.Count; i++)
        {
            (double low, double high) = master.Rows.Rows[i];
            bound += Duals[i] == 0 ? 0 : Duals[i] * (Duals[i] > 0 ? low : high);
        }

        HashSet<int> patterns = [.. master.Patterns.Select(p => p.Column)];
        for (int j = 0; j < master.Rows.Columns.Count; j++)
        {
            if (!patterns.Contains(j))
            {
                MasterColumn column = master.Rows.Columns[j];
                double reduced = column.Cost - column.Entries.Sum(e => Duals[e.Row] * e.Factor);
                bound += Math.Min(0, reduced) * column.Most;
            }
        }

        for (int k = 0; k < priced.Length; k++)
        {
            bound += Math.Min(0, priced[k].Reduced) * felt.All[k].Rolls.Count;
        }

        return bound;
    }

    // Every die alone, as often as the roll holds it.
    private void Begin(OrderRequest question, FeltKind kind, PatternPricing own)
    {
        for (int i = 0; i < kind.Dies.Count; i++)
        {
            int[] strikes = new int[kind.Dies.Count];
            int[] pieces = new int[kind.Dies.Count];
            strikes[i] = question.Dies[kind.Dies[i].Die].Shape.StrikesIn(kind.ClearM);
            pieces[i] = 1;
            master.Add(own.Made(kind, strikes, pieces));
        }
    }
}
