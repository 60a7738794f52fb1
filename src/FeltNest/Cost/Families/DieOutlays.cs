using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Families;

/// <summary>Works out how many whole dies and rules a ball takes.</summary>
internal static class DieOutlays
{
    // A rule that ends this share of its life early, rounding alone, does.
    private const double Slack = 1e-9;

    // More dies than any shop can buy: a slip of the volume or of the life.
    private const double MostRules = 1e9;

    extension(DieOutlay)
    {
        /// <summary>Dies and rules over some years. A die is bought whole, and so is a rule: a rule is begun where the one before it is
        /// dull, a die is bought where the one before it takes no further rule.</summary>
        /// <param name="die">The die.</param>
        /// <param name="strikesPerYear">Strikes in a year.</param>
        /// <param name="years">Years that are looked at.</param>
        /// <param name="overheadPercent">Overhead on its money, per cent.</param>
        /// <exception cref="InputException">More rules than can be counted.</exception>
        public static DieOutlay Of(DieCost die, double strikesPerYear, double years, decimal overheadPercent)
        {
            double wanted = Math.Ceiling((strikesPerYear * years / die.LifeStrikes) - Slack);
            if (wanted > MostRules)
            {
                throw new InputException(
                    null, "die.lifeStrikes", $"{die.LifeStrikes} makes more rules than can be counted in {years} years");
            }

            int rules = Math.Max(1, (int)wanted);
            int dies = (rules + die.ReRules) / (die.ReRules + 1);
            decimal money = (dies * die.Price) + ((rules - dies) * die.ReRulePrice);
            return new DieOutlay
            {
                Dies = dies,
                ReRules = rules - dies,
                DiePrice = die.Price,
                PerYear = Math.Round(money / (decimal)years * (1 + (overheadPercent / 100)), 2),
            };
        }
    }
}
