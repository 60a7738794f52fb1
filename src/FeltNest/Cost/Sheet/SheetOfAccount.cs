using FeltNest.Cost.Offers;
using FeltNest.Yield;

namespace FeltNest.Cost.Sheet;

/// <summary>Works out the cost sheet of an account.</summary>
internal static class SheetOfAccount
{
    extension(CostSheet)
    {
        /// <summary>The sheet of an account.</summary>
        /// <param name="account">The felt.</param>
        /// <param name="terms">On what terms the felt is bought.</param>
        /// <param name="costs">What else is known.</param>
        /// <param name="thousandBalls">How many thousand balls are made of it, or null where that is not known: then nothing is left over
        /// and the first price counts.</param>
        /// <exception cref="InputException">A currency without a rate, or a price or recovery by the kilogram while the mass is not
        /// known.</exception>
        public static CostSheet Of(FeltAccount account, FeltTerms terms, CostInputs costs, double? thousandBalls = null)
        {
            LandedFelt landed = new(account, terms, costs, thousandBalls);
            double wasteKg = WasteKg(costs, account);
            decimal strikes = (decimal)account.StrikesPerThousandBalls;
            DieCost? made = costs.DieOf(account.Cavities);
            decimal? recovery = costs.RecoveryPerKg * (decimal)wasteKg;
            decimal? labour = costs.PerStrike * strikes;
            decimal? die = made?.PerStrike * strikes;
            decimal? setUp = costs.SetUp?.PerThousandBalls;
            decimal? board = costs.BoardPerStrike * strikes;
            decimal? handling = costs.HandlingPerThousandBalls;
            decimal material = landed.Total - (recovery ?? 0);
            decimal conversion = (setUp ?? 0) + (labour ?? 0) + (die ?? 0) + (board ?? 0) + (handling ?? 0);
            decimal? overhead = conversion * costs.OverheadPercent / 100;
            CostLine[] lines =
            [
                .. FeltLines(account),
                new(10, "felt, landed and coated", landed.Quantity, PriceUnits.WordOf(terms.Price.Unit), landed.Total),
                new(11, "less waste sold", costs.RecoveryPerKg is null ? null : wasteKg, "kg", -recovery),
                new(12, "net material", null, string.Empty, material),
                new(13, "set-up", null, string.Empty, setUp),
                new(14, "labour and machine", account.StrikesPerThousandBalls, "strikes", labour),
                new(15, "die", account.StrikesPerThousandBalls, "strikes", die),
                new(16, "cutting board", account.StrikesPerThousandBalls, "strikes", board),
                new(17, "handling and inspection", null, string.Empty, handling),
                new(18, "overhead", null, string.Empty, overhead),
                new(19, "total", null, string.Empty, material + conversion + (overhead ?? 0)),
                .. landed.Lines,
            ];
            return new CostSheet(
                costs.Currency, landed.Price, lines,
                [.. lines.Where(l => l.Number is > 9 and < 20 && l.Amount is null).Select(l => l.Name)])
            {
                Purchase = landed.Purchase,
                TotalPerPrice = landed.PerPrice,
                Die = made,
            };
        }
    }

    // Lines 1 to 9: where the felt goes.
    private static CostLine[] FeltLines(FeltAccount account)
    {
        FeltUsage gross = account.PerThousandBalls;
        FeltShares s = account.Shares;
        double Area(double percent) => gross.SquareMetres * percent / 100;
        return
        [
            new(1, "net felt in good panels", account.NetSquareMetres, "m2", null),
            new(2, "web between panels", Area(s.BetweenPanels), "m2", null),
            new(3, "unused edge", Area(s.UnusedEdge), "m2", null),
            new(4, "edge trim", Area(s.EdgeTrim), "m2", null),
            new(5, "roll ends", Area(s.RollEnds), "m2", null),
            new(6, "short remnants", Area(s.Remnant), "m2", null),
            new(7, "fault loss", Area(s.Faults), "m2", null),
            new(8, "rejects and panels without a partner", Area(s.Rejects + s.Unpaired), "m2", null),
            new(9, "gross felt", gross.SquareMetres, "m2", null),
        ];
    }

    private static double WasteKg(CostInputs costs, FeltAccount account)
    {
        FeltUsage gross = account.PerThousandBalls;
        double wasteSquareMetres = gross.SquareMetres - account.NetSquareMetres;
        if (costs.RecoveryPerKg is null)
        {
            return 0;
        }

        return gross.Kilograms is { } kg
            ? kg * wasteSquareMetres / gross.SquareMetres
            : throw new InputException(
                null, "massPerAreaGsm", "is not known, and waste is sold by the kilogram: give the mass per area of the felt");
    }
}
