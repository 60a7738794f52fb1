using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>Looks for the values of single assumptions, all others as they are, at which another row becomes the cheapest. The lays stay as they are.</summary>
internal static class RankFlips
{
    // How finely a range is looked through, and how exactly a flip is then found, as shares of the range.
    private const int Places = 100;
    private const double Exact = 1e-6;

    // Ranges looked through: shares up to 20 %, ends up to 2 m, money up to ten times what it is.
    private const double MostPercent = 20, MostEndMm = 2000, MostTimes = 10;

    /// <summary>All flips found, in the order of the cost sheet.</summary>
    /// <param name="question">What was asked, with costs.</param>
    /// <param name="rows">Rows, each with a cost.</param>
    /// <param name="total">Cost of a row under other costs and with other faults of its own, per cent, or null for those it has.</param>
    public static IReadOnlyList<RankFlip> Of(CompareQuestion question, IReadOnlyList<CompareRow> rows, Func<CompareRow, CostInputs, double?, decimal> total)
    {
        if (question.Costs is not { } costs || rows.Count < 2)
        {
            return [];
        }

        CompareRow best = rows.First(r => r.Rank == 1);
        FeltLosses losses = costs.Losses;
        List<RankFlip> found = [];
        Look("length lost at each roll end, mm", losses.EndLossMm, MostEndMm, v => Best(costs with { Losses = losses with { EndLossMm = v } }, null));
        Look($"faults of {best.Case.Name} alone, %", best.Case.Offer?.FaultPercent ?? losses.FaultPercent, MostPercent, v => Best(costs, v));
        Look("rejects, %", losses.RejectPercent, MostPercent, v => Best(costs with { Losses = losses with { RejectPercent = v } }, null));
        Money("price of a kilogram of waste", costs.RecoveryPerKg, v => costs with { RecoveryPerKg = v });
        Money("labour and machine of a strike", costs.PerStrike, v => costs with { PerStrike = v });
        Money("price of the die", costs.Die?.Price, v => costs with { Die = costs.Die! with { Price = v } });
        foreach (CurrencyRate rate in costs.Rates.Where(r => rows.Any(row => row.Sheet!.Price.Currency == r.Currency)))
        {
            Money($"{costs.Currency} for one {rate.Currency}", rate.Rate, v => costs with { Rates = [.. costs.Rates.Select(r => r == rate ? r with { Rate = v } : r)] });
        }

        return found;

        string Best(CostInputs changed, double? ownFaults) => rows.MinBy(r => (total(r, changed, r == best ? ownFaults : null), r.Rank))!.Case.Name;

        void Money(string assumption, decimal? now, Func<decimal, CostInputs> with)
        {
            if (now is > 0)
            {
                Look(assumption, (double)now, MostTimes * (double)now, v => Best(with((decimal)v), null));
            }
        }

        void Look(string assumption, double now, double most, Func<double, string> winner)
        {
            double? up = Nearest(now, Math.Max(most, now), best.Case.Name, winner), down = Nearest(now, 0, best.Case.Name, winner);
            found.AddRange(new[] { down, up }.OfType<double>().Select(at => new RankFlip(assumption, now, at, winner(at))));
        }
    }

    // Steps from here towards the end of the range; the first step over a flip is halved down to it, and the far side of it comes back.
    private static double? Nearest(double from, double to, string best, Func<double, string> winner)
    {
        double range = to - from;
        for (int i = 1; i <= Places && range != 0; i++)
        {
            double near = from + (range * (i - 1) / Places), far = from + (range * i / Places);
            if (winner(far) == best)
            {
                continue;
            }

            while (Math.Abs(far - near) > Exact * Math.Abs(range))
            {
                double middle = (near + far) / 2;
                (near, far) = winner(middle) == best ? (middle, far) : (near, middle);
            }

            return far;
        }

        return null;
    }
}
