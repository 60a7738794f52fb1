using FeltNest.Layout;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;

namespace FeltNest.Rolls.Orders;

/// <summary>The strikes of every piece of work: on a measured roll planned round its faults, else in line.</summary>
internal static class CutTickets
{
    /// <summary>One plan of strikes for each piece whose die has a layout, in the order of the work.</summary>
    public static IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> Of(OrderPlan plan)
    {
        Dictionary<CutDie, StrikePattern> patterns = plan.Cuts
            .Select(c => c.Die)
            .Distinct()
            .Where(d => d.Drawn is not null)
            .ToDictionary(d => d, d => StrikePattern.Of(d.Drawn!.Value.Layout, d.Drawn.Value.Repeats));
        return [.. plan.Cuts.Where(c => c.Die.Drawn is not null).Select(c => (c, Strikes(c, patterns[c.Die])))];
    }

    /// <summary>Share of the panels struck in line that are good on a measured roll, 0 to 1.</summary>
    /// <param name="roll">The roll, measured.</param>
    /// <param name="die">The die; a roll that is nowhere wide enough for it gives nothing.</param>
    /// <param name="endLossMm">Length lost at each end, mm.</param>
    internal static double GoodShare(StockRoll roll, CutDie die, double endLossMm)
    {
        (RollLayout layout, int repeats) = die.Drawn!.Value;
        double from = (1000 * roll.BeginM) + endLossMm;
        int strikes = die.Shape.StrikesIn((roll.Measured!.LengthMm - from - endLossMm) / 1000);
        RollRequest request = new()
        {
            Layout = layout,
            Roll = Part(roll.Measured, roll.Measured.LengthMm - endLossMm),
            RepeatsPerStrike = repeats,
            GuidePlayMm = 0,
            FromMm = from,
        };
        if (strikes == 0 || !RollRoom.Takes(request))
        {
            return 0;
        }

        try
        {
            RollPlan plan = StrikePlanner.Run(request);
            return Math.Min(1, OwnGood(plan, die) / ((double)strikes * die.Shape.ClassPanels.Sum()));
        }
        catch (NoAnswerException)
        {
            return 0;
        }
    }

    /// <summary>Good panels of the part that the die's orders are for.</summary>
    internal static int OwnGood(RollPlan strikes, CutDie die) => strikes.Yields.Single(y => y.Part == die.Shape.Part).GoodPanels;

    private static RollPlan Strikes(OrderCut cut, StrikePattern pattern)
    {
        (RollLayout layout, int repeats) = cut.Die.Drawn!.Value;
        double from = 1000 * cut.FromM;
        double to = 1000 * cut.ToM;
        if (cut.Roll.Measured is { } measured)
        {
            return RoundFaults(pattern, new RollRequest
            {
                Layout = layout,
                Roll = Part(measured, Math.Min(to, measured.LengthMm)),
                RepeatsPerStrike = repeats,
                GuidePlayMm = 0,
                FromMm = from,
            });
        }

        return InLine(cut, pattern, new RollRequest
        {
            Layout = layout,
            Roll = Even(cut.Roll, to),
            RepeatsPerStrike = repeats,
            GuidePlayMm = 0,
            FromMm = from,
        });
    }

    // A roll that nobody measured, up to a place: as wide as it is said to be, without faults.
    private static FeltRoll Even(StockRoll stock, double lengthMm) => new()
    {
        Name = stock.Name,
        Felt = stock.Felt,
        Lot = stock.Lot,
        LengthMm = lengthMm,
        Widths = [new WidthReading { XMm = 0, WidthMm = stock.WidthMm }],
        Splices = [],
        SkewDeg = 0,
        Nap = stock.Turned ? NapDirection.Forward : stock.Nap,
        MassPerAreaGsm = null,
        Faults = [],
    };

    // A piece in which nothing can be struck has no strikes, and the plan of the orders goes by that.
    private static RollPlan RoundFaults(StrikePattern pattern, RollRequest request)
    {
        try
        {
            return StrikePlanner.Run(request);
        }
        catch (NoAnswerException)
        {
            return Made(pattern, request, []);
        }
    }

    // Strikes one feed apart.
    private static RollPlan InLine(OrderCut cut, StrikePattern pattern, RollRequest request)
    {
        PlannedStrike[] strikes =
        [
            .. Enumerable.Range(0, cut.Strikes).Select(k => new PlannedStrike
            {
                XMm = request.FromMm + (k * pattern.FeedMm),
                ShiftYMm = 0,
                GoodPanels = pattern.Panels.Count,
                Lost = [],
            }),
        ];
        return Made(pattern, request, strikes);
    }

    private static RollPlan Made(StrikePattern pattern, RollRequest request, PlannedStrike[] strikes) => new()
    {
        Request = request,
        Pattern = pattern,
        Grid = StrikeGrid.Of(request, pattern.FeedMm),
        Strikes = strikes,
        BackToBackGoodPanels = strikes.Length * pattern.Panels.Count,
        ClearAdvanceMm = pattern.FeedMm,
        LeastOffLineMm = pattern.FeedMm,
    };

    // The roll up to a place.
    private static FeltRoll Part(FeltRoll roll, double lengthMm) => roll with
    {
        LengthMm = lengthMm,
        Splices = [.. roll.Splices.Where(s => s.FromMm < lengthMm)],
        Faults = [.. roll.Faults.Where(f => f.XMm < lengthMm)],
    };
}
