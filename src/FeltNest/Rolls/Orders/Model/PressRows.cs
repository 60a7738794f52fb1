using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>Dies and presses in the model: strikes left, a mounting for each press a die works on, hours. When work is done is left to the
/// clock.</summary>
internal sealed class PressRows
{
    private readonly MixedModel model;
    private readonly OrderRequest question;
    private readonly List<DieRun> runs = [];

    /// <summary>Adds all dies and presses of a question to a model.</summary>
    public PressRows(MixedModel model, OrderRequest question, FeltRows felt)
    {
        (this.model, this.question) = (model, question);
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
            }
        }

        runs.ForEach(Work);
        runs.ForEach(Place);
        foreach (PressSpec press in question.Presses)
        {
            Hours(press);
        }
    }

    /// <summary>Dies that can be used.</summary>
    public IReadOnlyList<DieRun> Runs => runs;

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
        run.On = [.. run.Presses.Select(_ => model.Choice())];
        run.OnPress = new LinearSum[run.Presses.Count];
        for (int p = 0; p < run.Presses.Count; p++)
        {
            PressSpec press = run.Presses[p];
            double mounting = press.MountedDie == run.Die.Name ? 0 : press.ChangeOverMinutes / 60;
            Cost.Add(run.On[p], (double)question.Rules.HourRate * mounting);
            run.OnPress[p] = new LinearSum().Add(run.On[p], mounting);
        }

        for (int c = 0; c < run.Cuts.Count; c++)
        {
            (CoverOrder order, LinearSum strikes, double most) = run.Cuts[c];
            LinearSum split = new LinearSum().Add(strikes, -1);
            foreach (int p in Enumerable.Range(0, run.Presses.Count).Where(p => OrderRequest.CutsOn(order, run.Presses[p], run.Die)))
            {
                double hour = 1 / (60 * run.Presses[p].StrokesPerMinute);
                Unknown here = model.Number(most);
                split.Add(here);
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
}
