using FeltNest.Cost.Sheet;

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

    /// <param name="costs">Costs with the balls of a year.</param>
    /// <param name="today">Cost of a thousand balls today, without the wear of the die.</param>
    public YearStudy(CostInputs costs, decimal today) => (this.costs, this.today) = (costs, today);

    /// <summary>All choices, the greatest present value first; without interest the greatest saving.</summary>
    public IReadOnlyList<YearChoice> Ranked =>
        [
            .. choices
                .OrderByDescending(choice => choice.NetPresentValue ?? choice.SavedPerYear)
                .ThenBy(choice => choice.What, StringComparer.Ordinal),
        ];

    /// <summary>Adds a choice; one without a price of its die is left out.</summary>
    /// <param name="what">What it is.</param>
    /// <param name="sheet">Cost of a thousand balls with it.</param>
    public void Add(string what, CostSheet? sheet)
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
