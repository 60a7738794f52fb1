using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>Weighs dies of several sizes and layers of felt: a greater die costs more and saves strikes, and pays from a number of balls
/// on.</summary>
internal static class GangStudy
{
    /// <summary>The choices in the order of cavities and plies, those that come to the same strike left out.</summary>
    /// <param name="costs">Costs with a gang.</param>
    /// <param name="priced">Account and sheet of the row under other costs, cut in so many plies; null where a roll is too short for one
    /// strike.</param>
    public static IReadOnlyList<GangChoice> Of(CostInputs costs, Func<CostInputs, int, (FeltAccount Account, CostSheet Sheet)?> priced)
    {
        GangOptions gang = costs.Gang!;
        List<GangChoice> choices = [];
        foreach (int cavities in gang.Cavities)
        {
            foreach (int plies in gang.Plies)
            {
                CostInputs here = costs with
                {
                    Losses = costs.Losses with { MostPanelsPerStrike = cavities },
                    PerStrike = costs.PerStrike + ((plies - 1) * gang.PricePerExtraPly),
                };
                if (priced(here, plies) is not { } first)
                {
                    continue;
                }

                // A die has as many cavities as its strike cuts of one layer, whatever was allowed.
                double perStrike = first.Account.PanelsPerStrike;
                if (!choices.Exists(c => c.Plies == plies && Math.Abs(c.PanelsPerStrike - perStrike) < 1e-9))
                {
                    choices.Add(new GangChoice
                    {
                        Cavities = cavities,
                        Plies = plies,
                        PanelsPerStrike = perStrike,
                        StrikesPerThousandBalls = first.Account.StrikesPerThousandBalls,
                        DiePrice = first.Sheet.Die!.Price,
                        RunningCost = first.Sheet.WithoutDie,
                        Total = first.Sheet.Total,
                        PaysFromThousandBalls = null,
                    });
                }
            }
        }

        return [.. choices.Select(c => c with { PaysFromThousandBalls = From(c, choices) })];
    }

    // Of lines price + running x balls, where one becomes the lowest: the last crossing with a cheaper die, unless a line that falls no
    // slower is below it there.
    private static decimal? From(GangChoice choice, List<GangChoice> all)
    {
        decimal from = 0;
        foreach (GangChoice other in all)
        {
            if (other.DiePrice < choice.DiePrice)
            {
                if (other.RunningCost <= choice.RunningCost)
                {
                    return null;
                }

                from = Math.Max(from, (choice.DiePrice - other.DiePrice) / (other.RunningCost - choice.RunningCost));
            }
        }

        decimal At(GangChoice c) => c.DiePrice + (c.RunningCost * from);
        return all.TrueForAll(o => At(o) >= At(choice) - 0.000001m && (o.RunningCost >= choice.RunningCost || At(o) > At(choice)))
            || all.Count == 1
            ? from
            : null;
    }
}
