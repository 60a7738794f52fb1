using System.Globalization;
using FeltNest.Yield;

namespace FeltNest.Cost.Sheet;

/// <summary>Works out the account of a lay on a roll.</summary>
internal static class LayAccount
{
    // A strike that misses the end of the cloth by this share of its length, rounding alone, still fits.
    private const double Slack = 1e-9;

    extension(FeltAccount)
    {
        /// <summary>The account of a lay on a roll.</summary>
        /// <param name="plan">The lay.</param>
        /// <param name="losses">What is lost beside it.</param>
        /// <param name="massPerAreaGsm">Mass per area of the felt, g/m2, or null.</param>
        /// <exception cref="NoAnswerException">The roll is shorter than its ends and one strike.</exception>
        public static FeltAccount Of(LayPlan plan, FeltLosses losses, double? massPerAreaGsm)
        {
            bool whole = losses.RollLengthM is not null;
            double roll = 1000 * (losses.RollLengthM ?? 1);
            double ends = whole ? 2 * losses.EndLossMm : 0;
            double clear = roll - ends;
            double cut = 0;
            double panelArea = 0;
            double strikes = 0;
            double cutArea = 0;
            double remnantArea = 0;
            double longest = 0;
            double repeats = 0;
            double left = 0;
            foreach (CutBand band in plan.Bands)
            {
                // A lay that says how its die cuts a repeat is cut so.
                int most = losses.MostPanelsPerStrike ?? band.Panels;
                int together = band.StrikesPerRepeat > 1 ? 1 : Math.Max(1, most / band.Panels);
                int strikesPerStep = band.StrikesPerRepeat > 1 ? band.StrikesPerRepeat : (band.Panels + most - 1) / most;
                double step = band.RepeatMm * together;
                double steps = whole ? Math.Floor((clear / step) + Slack) : clear / step;
                if (steps < 1 && whole)
                {
                    throw new NoAnswerException(string.Create(
                        CultureInfo.InvariantCulture,
                        $"a roll of {losses.RollLengthM:0.###} m less {ends:0.#} mm at its ends is shorter than one strike of {step:0.#} "
                            + $"mm: use a longer roll or fewer panels a strike"));
                }

                (repeats, left) = band == plan.Bands[0] ? (steps * together, clear - (steps * step)) : (repeats, left);
                cut += steps * together * band.Panels;
                panelArea += steps * together * band.PanelAreaMm2;
                strikes += steps * strikesPerStep;
                cutArea += steps * step * band.HeightMm;
                remnantArea += (clear - (steps * step)) * band.HeightMm;
                longest = Math.Max(longest, steps * step);
            }

            double usable = plan.RollWidthMm - plan.TrimMm;
            double all = roll * plan.RollWidthMm;
            double heights = plan.Bands.Sum(b => b.HeightMm);
            double unused = longest * plan.UnusedEdgeMm;

            // Cloth between bands is cut as far as the longest of them, and is web.
            double web = cutArea + ((usable - heights) * longest) - panelArea - unused;
            double remnant = remnantArea + ((usable - heights) * (clear - longest));
            double faults = losses.FaultPercent / 100;
            double rejects = (1 - faults) * losses.RejectPercent / 100;
            double unpaired = (1 - faults - rejects) * losses.UnpairedPercent / 100;
            double good = 1 - faults - rejects - unpaired;
            double balls = cut * good / 2;
            double metres = roll / balls;
            double squareMetres = metres * plan.RollWidthMm / 1000;
            double Percent(double area) => 100 * area / all;
            return new FeltAccount
            {
                RollLengthM = losses.RollLengthM,
                Repeats = whole ? repeats : null,
                RemnantMm = left,
                PanelsCut = cut,
                PanelsGood = cut * good,
                PerThousandBalls = new FeltUsage
                {
                    Metres = metres,
                    SquareMetres = squareMetres,
                    Kilograms = squareMetres * massPerAreaGsm / 1000,
                },
                NetSquareMetres = panelArea * good / balls / 1000,
                StrikesPerThousandBalls = 1000 * strikes / plan.Plies / balls,
                PanelsPerStrike = cut * plan.Plies / strikes,
                Shares = new FeltShares
                {
                    Good = Percent(panelArea * good),
                    BetweenPanels = Percent(web),
                    UnusedEdge = Percent(unused),
                    EdgeTrim = Percent(plan.TrimMm * roll),
                    RollEnds = Percent(ends * usable),
                    Remnant = Percent(remnant),
                    Faults = Percent(panelArea * faults),
                    Rejects = Percent(panelArea * rejects),
                    Unpaired = Percent(panelArea * unpaired),
                },
                Plies = plan.Plies,
            };
        }
    }
}
