using System.Globalization;
using FeltNest.Yield;

namespace FeltNest.Cost.Sheet;

/// <summary>Works out the account of a lay on a roll.</summary>
public static class LayAccount
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
            RollCut on = Cut(plan, losses);
            GoodShares shares = GoodShares.Of(losses);
            double usable = plan.RollWidthMm - plan.TrimMm;
            double all = on.RollMm * plan.RollWidthMm;
            double heights = plan.Bands.Sum(b => b.HeightMm);
            double unused = on.LongestMm * plan.UnusedEdgeMm;

            // Cloth between bands is cut as far as the on.LongestMm of them, and is web.
            double web = on.CutAreaMm2 + ((usable - heights) * on.LongestMm) - on.PanelAreaMm2 - unused;
            double remnant = on.RemnantAreaMm2 + ((usable - heights) * (on.ClearMm - on.LongestMm));
            double balls = on.Panels * shares.Good / 2;
            double metres = on.RollMm / balls;
            double squareMetres = metres * plan.RollWidthMm / 1000;
            double Percent(double area) => 100 * area / all;
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
                Shares = new FeltShares
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
                },
                Plies = plan.Plies,
            };
        }
    }

    // What is cut of a roll, or of a metre of cloth without ends where no roll length is known.
    private static RollCut Cut(LayPlan plan, FeltLosses losses)
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
                throw TooShort(losses, ends, step);
            }

            (repeats, left) = band == plan.Bands[0] ? (steps * together, clear - (steps * step)) : (repeats, left);
            cut += steps * together * band.Panels;
            panelArea += steps * together * band.PanelAreaMm2;
            strikes += steps * strikesPerStep;
            cutArea += steps * step * band.HeightMm;
            remnantArea += (clear - (steps * step)) * band.HeightMm;
            longest = Math.Max(longest, steps * step);
        }

        return new RollCut
        {
            RollMm = roll,
            EndsMm = ends,
            ClearMm = clear,
            Panels = cut,
            PanelAreaMm2 = panelArea,
            Strikes = strikes,
            CutAreaMm2 = cutArea,
            RemnantAreaMm2 = remnantArea,
            LongestMm = longest,
            Repeats = repeats,
            LeftMm = left,
        };
    }

    private static NoAnswerException TooShort(FeltLosses losses, double ends, double step) => new(string.Create(
        CultureInfo.InvariantCulture,
        $"a roll of {losses.RollLengthM:0.###} m less {ends:0.#} mm at its ends is shorter than one strike of {step:0.#} "
            + $"mm: use a longer roll or fewer panels a strike"));

    // Lengths and areas on one roll, mm and mm2.
    private sealed record RollCut
    {
        public required double RollMm { get; init; }

        public required double EndsMm { get; init; }

        public required double ClearMm { get; init; }

        public required double Panels { get; init; }

        public required double PanelAreaMm2 { get; init; }

        public required double Strikes { get; init; }

        public required double CutAreaMm2 { get; init; }

        public required double RemnantAreaMm2 { get; init; }

        public required double LongestMm { get; init; }

        public required double Repeats { get; init; }

        public required double LeftMm { get; init; }
    }

    // Shares of the panels cut.
    private readonly record struct GoodShares(double Faults, double Rejects, double Unpaired, double Good)
    {
        public static GoodShares Of(FeltLosses losses)
        {
            double faults = losses.FaultPercent / 100;
            double rejects = (1 - faults) * losses.RejectPercent / 100;
            double unpaired = (1 - faults - rejects) * losses.UnpairedPercent / 100;
            return new GoodShares(faults, rejects, unpaired, 1 - faults - rejects - unpaired);
        }
    }
}
