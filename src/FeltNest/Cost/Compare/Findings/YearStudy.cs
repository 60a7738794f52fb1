using FeltNest.Cost.Sheet;
using static FeltNest.InvariantText;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>What money could be spent on, and what it brings in a year against what is cut today: the first row, with the kept die where
/// there is one.</summary>
/// <remarks>Savings leave the wear of dies out, as the price of the new die is laid out at once. Present value: equal savings at the end of
/// each year, discounted (annuity; common practice, no source).</remarks>
internal sealed class YearStudy
{
    private readonly CostInputs costs;
    private readonly decimal today;
    private readonly List<YearChoice> choices = [];

    private YearStudy(CostInputs costs, decimal today) => (this.costs, this.today) = (costs, today);

    /// <summary>All choices, the greatest present value first; without interest the greatest saving. None where the balls of a year or a
    /// price are not known.</summary>
    /// <param name="question">What is compared.</param>
    /// <param name="rows">Its rows, the first of which is cut today.</param>
    /// <param name="cheapest">The cheapest way of a case where a strike may cut so many panels more.</param>
    /// <param name="smallerGap">The best row with a gap a millimetre smaller, or null.</param>
    public static IReadOnlyList<YearChoice> Of(
        CompareRequest question, IReadOnlyList<CompareRow> rows, Func<CompareCase, int, LayChoice> cheapest, LayChoice? smallerGap)
    {
        CompareRow first = rows[0];
        if (question.Costs is not { AnnualBalls: not null } costs
            || (first.Kept?.RunningCost ?? first.Sheet?.WithoutDie) is not { } today)
        {
            return [];
        }

        YearStudy years = new(costs, today);
        if (first.Kept is not null)
        {
            years.Add($"a new die for {first.Case.Name}", first.Sheet);
        }

        foreach (CompareRow row in rows.Skip(1))
        {
            years.Add($"{row.Case.Name} with a die of its own", row.Sheet);
        }

        CompareRow best = rows.First(r => r.Rank == 1);
        LayChoice more = cheapest(best.Case, best.Layout.Bands[0].Repeat.Panels.Count);
        if (more.Account.Cavities > best.Account.Cavities)
        {
            years.Add(
                Invariant($"{best.Case.Name}, {more.Account.Cavities:0.##} instead of {best.Account.Cavities:0.##} cavities"), more.Sheet);
        }

        double gap = question.Lay.GapMm;
        years.Add(Invariant($"{best.Case.Name}, gap {gap - 1:0.###} instead of {gap:0.###} mm"), smallerGap?.Sheet);
        return years.Ranked;
    }

    private IReadOnlyList<YearChoice> Ranked =>
        [
            .. choices
                .OrderByDescending(choice => choice.NetPresentValue ?? choice.SavedPerYear)
                .ThenBy(choice => choice.What, StringComparer.Ordinal),
        ];

    // A choice without a price of its die is left out.
    private void Add(string what, CostSheet? sheet)
    {
        if (sheet?.Die is not { } die)
        {
            return;
        }

        decimal saved = today - sheet.WithoutDie;
        decimal year = saved * (decimal)(costs.AnnualBalls!.Value / 1000);
        choices.Add(new YearChoice
        {
            What = what,
            Outlay = die.Price,
            SavedPerThousandBalls = saved,
            SavedPerYear = year,
            PaybackMonths = year > 0 ? (double)(12 * die.Price / year) : null,
            NetPresentValue = costs.InterestPercent is { } interest
                ? (year * (decimal)Annuity((double)interest / 100, costs.HorizonYears)) - die.Price : null,
        });
    }

    // Present value of 1 at the end of each year.
    private static double Annuity(double rate, double years) => rate == 0 ? years : (1 - Math.Pow(1 + rate, -years)) / rate;
}
