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
            RollCut on = new(plan, losses);
            GoodShares shares = GoodShares.Of(losses);
            double balls = on.Panels * shares.Good / 2;
            double metres = on.RollMm / balls;
            double squareMetres = metres * plan.RollWidthMm / 1000;
            return new FeltAccount
            {
                RollLengthM = losses.RollLengthM,
                Repeats = losses.RollLengthM is null ? null : on.Repeats,
                RemnantMm = on.LeftMm,
                PanelsCut = on.Panels,
                PanelsGood = on.Panels * shares.Good,
                PerThousandBalls = new FeltUsage
                {
                    Metres = metres,
                    SquareMetres = squareMetres,
                    Kilograms = squareMetres * massPerAreaGsm / 1000,
                },
                NetSquareMetres = on.PanelAreaMm2 * shares.Good / balls / 1000,
                StrikesPerThousandBalls = 1000 * on.Strikes / plan.Plies / balls,
                PanelsPerStrike = on.Panels * plan.Plies / on.Strikes,
                Shares = SharesOf(plan, on, shares),
                Plies = plan.Plies,
            };
        }
    }

    // Shares of the whole cloth, per cent.
    private static FeltShares SharesOf(LayPlan plan, RollCut on, GoodShares shares)
    {
        double usable = plan.RollWidthMm - plan.TrimMm;
        double all = on.RollMm * plan.RollWidthMm;
        double heights = plan.Bands.Sum(b => b.HeightMm);
        double unused = on.LongestMm * plan.UnusedEdgeMm;

        // Cloth between bands is cut as far as the longest of them, and is web.
        double web = on.CutAreaMm2 + ((usable - heights) * on.LongestMm) - on.PanelAreaMm2 - unused;
        double remnant = on.RemnantAreaMm2 + ((usable - heights) * (on.ClearMm - on.LongestMm));
        double Percent(double area) => 100 * area / all;
        return new FeltShares
        {
            Good = Percent(on.PanelAreaMm2 * shares.Good),
            BetweenPanels = Percent(web),
            UnusedEdge = Percent(unused),
            EdgeTrim = Percent(plan.TrimMm * on.RollMm),
            RollEnds = Percent(on.EndsMm * usable),
            Remnant = Percent(remnant),
            Faults = Percent(on.PanelAreaMm2 * shares.Faults),
            Rejects = Percent(on.PanelAreaMm2 * shares.Rejects),
            Unpaired = Percent(on.PanelAreaMm2 * shares.Unpaired),
        };
    }

    // What is cut of a roll, or of a metre of cloth without ends where no roll length is known: lengths and areas, mm and mm2.
    private sealed class RollCut
    {
        private readonly FeltLosses losses;
        private readonly bool isWhole;

        public RollCut(LayPlan plan, FeltLosses losses)
        {
            this.losses = losses;
            isWhole = losses.RollLengthM is not null;
            RollMm = 1000 * (losses.RollLengthM ?? 1);
            EndsMm = isWhole ? 2 * losses.EndLossMm : 0;
            ClearMm = RollMm - EndsMm;
            foreach (CutBand band in plan.Bands)
            {
                Add(band, isFirst: band == plan.Bands[0]);
            }
        }

        public double RollMm { get; }

        public double EndsMm { get; }

        public double ClearMm { get; }

        public double Panels { get; private set; }

        public double PanelAreaMm2 { get; private set; }

        public double Strikes { get; private set; }

        public double CutAreaMm2 { get; private set; }

        public double RemnantAreaMm2 { get; private set; }

        public double LongestMm { get; private set; }

        // Of the first band.
        public double Repeats { get; private set; }

        public double LeftMm { get; private set; }

        private void Add(CutBand band, bool isFirst)
        {
            // A lay that says how its die cuts a repeat is cut so.
            int most = losses.MostPanelsPerStrike ?? band.Panels;
            int together = band.StrikesPerRepeat > 1 ? 1 : Math.Max(1, most / band.Panels);
            int strikesPerStep = band.StrikesPerRepeat > 1 ? band.StrikesPerRepeat : (band.Panels + most - 1) / most;
            double step = band.RepeatMm * together;
            double steps = isWhole ? Math.Floor(((ClearMm - band.OverhangMm) / step) + Slack) : ClearMm / step;
            if (steps < 1 && isWhole)
            {
                throw new NoAnswerException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"a roll of {losses.RollLengthM:0.###} m less {EndsMm:0.#} mm at its ends is shorter than one strike of "
                        + $"{step + band.OverhangMm:0.#} "
                        + $"mm: use a longer roll or fewer panels a strike"));
            }

            // A last strike shorter than its feed needs no more cloth than it cuts.
            double cutMm = Math.Min(steps * step, ClearMm);
            if (isFirst)
            {
                (Repeats, LeftMm) = (steps * together, ClearMm - cutMm);
            }

            Panels += steps * together * band.Panels;
            PanelAreaMm2 += steps * together * band.PanelAreaMm2;
            Strikes += steps * strikesPerStep;
            CutAreaMm2 += cutMm * band.HeightMm;
            RemnantAreaMm2 += (ClearMm - cutMm) * band.HeightMm;
            LongestMm = Math.Max(LongestMm, cutMm);
        }
    }

    // Shares of the panels cut.
    private readonly record struct GoodShares
    {
        public required double Faults { get; init; }

        public required double Rejects { get; init; }

        public required double Unpaired { get; init; }

        public required double Good { get; init; }

        public static GoodShares Of(FeltLosses losses)
        {
            double faults = losses.FaultPercent / 100;
            double rejects = (1 - faults) * losses.RejectPercent / 100;
            double unpaired = (1 - faults - rejects) * losses.UnpairedPercent / 100;
            return new GoodShares
            {
                Faults = faults,
                Rejects = rejects,
                Unpaired = unpaired,
                Good = 1 - faults - rejects - unpaired,
            };
        }
    }
}
