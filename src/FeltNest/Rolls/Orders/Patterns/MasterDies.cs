namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Dies and presses in the master: strikes left, new rules, dies to make, hours of the presses.</summary>
internal sealed class MasterDies
{
    private readonly Dictionary<int, int> strikes = [];
    private readonly Dictionary<int, int> hours = [];

    /// <summary>Adds the dies that cut any felt.</summary>
    /// <param name="question">The question.</param>
    /// <param name="felt">Its felt.</param>
    /// <param name="rows">Rows of the master.</param>
    /// <param name="costShare">1 where money counts, 0 where balls short alone do.</param>
    public MasterDies(OrderRequest question, FeltKinds felt, MasterRows rows, double costShare)
    {
        foreach (int d in felt.All.SelectMany(k => k.Dies).Select(d => d.Die).Distinct().Order())
        {
            CutDie die = question.Dies[d];
            strikes[d] = rows.Row(double.NegativeInfinity, die.StrikesLeft);
            if (die.MakePrice is { } make)
            {
                rows.Column((double)make * costShare, 1, (strikes[d], -die.LifeStrikes));
            }

            if (die.MostReRules > 0)
            {
                rows.Column((double)die.ReRulePrice * costShare, die.MostReRules, (strikes[d], -die.LifeStrikes));
            }
        }

        AddHours(question, rows);
    }

    /// <summary>Factors of a pattern in the rows of its dies.</summary>
    public IEnumerable<(int Row, double Factor)> Entries(RollPattern pattern)
    {
        for (int i = 0; i < pattern.Strikes.Length; i++)
        {
            int die = pattern.Kind.Dies[i].Die;
            if (pattern.Strikes[i] > 0)
            {
                yield return (strikes[die], pattern.Strikes[i]);
            }

            if (pattern.Strikes[i] > 0 && hours.TryGetValue(die, out int row))
            {
                yield return (row, pattern.Strikes[i]);
            }
        }
    }

    /// <summary>What the rows of a die pay for a strike: nothing, or less.</summary>
    public double Price(int die, IReadOnlyList<double> duals) =>
        duals[strikes[die]] + (hours.TryGetValue(die, out int row) ? duals[row] : 0);

    // For dies that no press without a limit takes; time of changes is left out.
    private void AddHours(OrderRequest question, MasterRows rows)
    {
        Dictionary<PressSpec, int> limits = question.Presses.Where(p => p.Hours is not null)
            .ToDictionary(p => p, p => rows.Row(double.NegativeInfinity, p.Hours!.Value));
        foreach (int d in strikes.Keys.Order())
        {
            PressSpec[] takes = [.. question.Presses.Where(p => OrderRequest.Takes(p, question.Dies[d]))];
            if (takes.All(p => p.Hours is not null))
            {
                hours[d] = rows.Row(double.NegativeInfinity, 0);
                foreach (PressSpec press in takes)
                {
                    rows.Column(0, press.Hours!.Value, (limits[press], 1), (hours[d], -60 * press.StrokesPerMinute));
                }
            }
        }
    }
}
