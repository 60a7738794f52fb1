using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>Dies and presses in the model: strikes left, one campaign a die, hours, days on which orders are done.</summary>
internal sealed class PressRows
{
    private readonly MixedModel model;
    private readonly OrderRequest question;
    private readonly List<DieRun> runs = [];
    private readonly double horizon;

    /// <summary>Adds all dies and presses of a question to a model.</summary>
    public PressRows(MixedModel model, OrderRequest question, FeltRows felt)
    {
        (this.model, this.question) = (model, question);
        double longest = 1;
        foreach (CutDie die in question.Dies)
        {
            (CoverOrder Order, LinearSum Strikes, double Most)[] cuts =
            [
                .. question.Orders.Select(order => Strikes(felt, order, die)).Where(c => !c.Strikes.IsEmpty),
            ];
            PressSpec[] presses = [.. question.Presses.Where(press => OrderRequest.Takes(press, die))];
            if (cuts.Length > 0)
            {
                runs.Add(new DieRun(die, [.. cuts.Select(c => (c.Order, c.Strikes, Math.Min(c.Most, die.MostStrikes)))], presses));
                longest += cuts.Sum(c => Math.Min(c.Most, die.MostStrikes)) / presses.Min(p => p.StrokesPerMinute) / 60;
                longest += presses.Max(p => p.ChangeOverMinutes) / 60;
            }
        }

        horizon = longest;
        runs.ForEach(Work);
        runs.ForEach(Place);
        foreach (PressSpec press in question.Presses)
        {
            Hours(press);
        }
    }

    /// <summary>Adds campaigns in sequence and days: left out as long as a plan is in time without them, as they make the model far
    /// heavier.</summary>
    public void AddDays()
    {
        foreach (DieRun run in runs)
        {
            run.Start = model.Number(horizon);
            run.Used = [.. run.Cuts.Select(_ => model.Choice())];
            for (int c = 0; c < run.Cuts.Count; c++)
            {
                model.AtMost(new LinearSum().Add(run.Cuts[c].Strikes).Add(run.Used[c], -run.Cuts[c].Most), 0);
            }

            foreach (LinearSum hours in run.OnPress)
            {
                model.AtMost(new LinearSum().Add(hours).Add(run.Start!), horizon);
            }
        }

        for (int a = 0; a < runs.Count; a++)
        {
            for (int b = a + 1; b < runs.Count; b++)
            {
                Sequence(runs[a], runs[b]);
            }
        }

        foreach (CoverOrder order in question.Orders)
        {
            Done(order);
        }
    }

    /// <summary>Dies that can be used.</summary>
    public IReadOnlyList<DieRun> Runs => runs;

    /// <summary>Orders late.</summary>
    public LinearSum Late { get; } = new();

    /// <summary>Cost of strikes, dies and changing them.</summary>
    public LinearSum Cost { get; } = new();

    private (CoverOrder Order, LinearSum Strikes, double Most) Strikes(FeltRows felt, CoverOrder order, CutDie die)
    {
        LinearSum all = new();
        double alone = 0;
        double pieces = 0;
        double least = 0;
        foreach (RollUnit unit in felt.Units)
        {
            for (int i = 0; i < unit.Choices.Count; i++)
            {
                if (unit.Choices[i].Order == order && unit.Choices[i].Die == die)
                {
                    all.Add(unit.Strikes[i]);
                    alone = Math.Max(alone, question.StrikesFor(order, unit.Kind, die));
                    least = Math.Max(least, unit.Choices[i].Least);
                    pieces += unit.Rolls.Count;
                }
            }
        }

        // More is never worth its cost: a strike a piece for what uneven classes leave, and one least piece that could not be shorter.
        return (order, all, alone + pieces + least);
    }

    private void Work(DieRun run)
    {
        CutDie die = run.Die;
        LinearSum strikes = new();
        foreach ((_, LinearSum cut, _) in run.Cuts)
        {
            strikes.Add(cut);
        }

        Cost.Add(strikes, (double)question.Rules.PerStrike);
        if (die.MakePrice is { } price)
        {
            run.Make = model.Choice();
            strikes.Add(run.Make, -die.LifeStrikes);
            Cost.Add(run.Make, (double)price);
        }

        if (die.MostReRules > 0)
        {
            run.ReRules = model.Whole(0, die.MostReRules);
            strikes.Add(run.ReRules, -die.LifeStrikes);
            Cost.Add(run.ReRules, (double)die.ReRulePrice);
            if (run.Make is { } make)
            {
                model.AtMost(new LinearSum().Add(run.ReRules).Add(make, -die.MostReRules), 0);
            }
        }

        model.AtMost(strikes, die.StrikesLeft);
    }

    private void Place(DieRun run)
    {
        LinearSum one = new();
        run.On = [.. run.Presses.Select(_ => model.Choice())];
        run.OnPress = new LinearSum[run.Presses.Count];
        for (int p = 0; p < run.Presses.Count; p++)
        {
            PressSpec press = run.Presses[p];
            one.Add(run.On[p]);
            run.Set.Add(run.On[p], press.ChangeOverMinutes / 60);
            Cost.Add(run.On[p], (double)question.Rules.HourRate * press.ChangeOverMinutes / 60);
            run.OnPress[p] = new LinearSum().Add(run.On[p], press.ChangeOverMinutes / 60);
        }

        model.AtMost(one, 1);
        run.Hours = new LinearSum[run.Cuts.Count];
        for (int c = 0; c < run.Cuts.Count; c++)
        {
            (_, LinearSum strikes, double most) = run.Cuts[c];
            LinearSum split = new LinearSum().Add(strikes, -1);
            run.Hours[c] = new LinearSum();
            for (int p = 0; p < run.Presses.Count; p++)
            {
                double hour = 1 / (60 * run.Presses[p].StrokesPerMinute);
                Unknown here = model.Number(most);
                split.Add(here);
                run.Hours[c].Add(here, hour);
                run.OnPress[p].Add(here, hour);
                model.AtMost(new LinearSum().Add(here).Add(run.On[p], -most), 0);
            }

            model.Equal(split, 0);
        }
    }

    private void Hours(PressSpec press)
    {
        LinearSum all = new();
        foreach (DieRun run in runs)
        {
            for (int p = 0; p < run.Presses.Count; p++)
            {
                if (run.Presses[p] == press)
                {
                    all.Add(run.OnPress[p]);
                }
            }
        }

        if (press.Hours is { } hours && !all.IsEmpty)
        {
            model.AtMost(all, hours);
        }
    }

    // Two dies on one press: one campaign ends before the other begins.
    private void Sequence(DieRun a, DieRun b)
    {
        if (!a.Presses.Intersect(b.Presses).Any())
        {
            return;
        }

        Unknown first = model.Choice();
        for (int p = 0; p < a.Presses.Count; p++)
        {
            for (int q = 0; q < b.Presses.Count; q++)
            {
                if (a.Presses[p] == b.Presses[q])
                {
                    // start a + length a <= start b where a goes first and both are here.
                    model.AtMost(
                        new LinearSum()
                            .Add(a.Start!)
                            .Add(a.OnPress[p])
                            .Add(b.Start!, -1)
                            .Add(first, horizon)
                            .Add(a.On[p], horizon)
                            .Add(b.On[q], horizon), 3 * horizon);
                    model.AtMost(
                        new LinearSum()
                            .Add(b.Start!)
                            .Add(b.OnPress[q])
                            .Add(a.Start!, -1)
                            .Add(first, -horizon)
                            .Add(a.On[p], horizon)
                            .Add(b.On[q], horizon), 2 * horizon);
                }
            }
        }
    }

    // An order is on time when every campaign that cuts it has cut it, and the orders due before it, by the end of its day.
    private void Done(CoverOrder order)
    {
        Unknown late = model.Choice();
        bool any = false;
        double due = question.Rules.HoursUntil(order.Due);
        foreach (DieRun run in runs)
        {
            for (int c = 0; c < run.Cuts.Count; c++)
            {
                if (run.Cuts[c].Order != order || due >= horizon)
                {
                    continue;
                }

                LinearSum done = new LinearSum().Add(run.Start!).Add(run.Set);
                for (int k = 0; k <= c; k++)
                {
                    done.Add(run.Hours[k]);
                }

                double slack = horizon - due;
                model.AtMost(done.Add(late, -slack).Add(run.Used[c], slack), due + slack);
                any = true;
            }
        }

        if (any)
        {
            Late.Add(late);
        }
    }
}
