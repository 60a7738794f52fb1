namespace FeltNest.Rolls.Orders;

/// <summary>Makes rolls fit for one-way layouts: those that lie against the feed are turned end for end, or each order is given one
/// direction.</summary>
internal static class NapTurn
{
    /// <summary>The question with its rolls turned, or its orders given a direction, as its rules ask. Shares of measured rolls are worked
    /// out after a turn and before orders are given a direction.</summary>
    public static OrderRequest Turned(OrderRequest question) => question.Rules.Nap == NapHandling.Turn
        ? question with { Rolls = [.. question.Rolls.Select(roll => IsToTurn(question, roll) ? Turned(roll) : roll)] }
        : question;

    /// <summary>The question with each order given the direction that gives it more balls; with the feed where both give as many.</summary>
    public static OrderRequest Apart(OrderRequest question) => question.Rules.Nap == NapHandling.Apart
        ? question with { Orders = [.. question.Orders.Select(order => order with { NapSide = SideOf(question, order) })] }
        : question;

    /// <summary>A measured roll turned end for end from where its usable felt begins: what was cut before is gone.</summary>
    /// <param name="roll">The roll as measured.</param>
    /// <param name="beginMm">Where its usable felt begins, mm.</param>
    public static FeltRoll EndForEnd(FeltRoll roll, double beginMm)
    {
        double left = roll.LengthMm - beginMm;
        double Place(double x) => roll.LengthMm - x;
        WidthReading[] widths =
        [
            new() { XMm = 0, WidthMm = roll.WidthAt(roll.LengthMm) },
            .. roll.Widths.Where(w => w.XMm > beginMm && w.XMm < roll.LengthMm).Reverse().Select(w => w with { XMm = Place(w.XMm) }),
            new() { XMm = left, WidthMm = roll.WidthAt(beginMm) },
        ];
        return roll with
        {
            LengthMm = left,
            Widths = widths,
            Splices =
            [
                .. roll.Splices.Where(s => s.XMm > beginMm && s.XMm < roll.LengthMm).Reverse().Select(s => s with { XMm = Place(s.XMm) }),
            ],
            Nap = Other(roll.Nap),
            Faults = [.. roll.Faults.Where(f => f.XMm + f.LengthMm > beginMm).Select(f => EndForEnd(roll, f))],
        };
    }

    // The selvedge that was the upper one runs along the guide: a box covers its place whatever the width does over its length.
    private static RollFault EndForEnd(FeltRoll roll, RollFault fault)
    {
        if (fault.RadiusMm is { } radius)
        {
            return RollFault.Disc(roll.LengthMm - fault.MiddleX, roll.WidthAt(fault.MiddleX) - fault.MiddleY, radius);
        }

        double last = fault.XMm + fault.LengthMm;
        double[] widths =
        [
            roll.WidthAt(fault.XMm), roll.WidthAt(last),
            .. roll.Widths.Where(w => w.XMm > fault.XMm && w.XMm < last).Select(w => w.WidthMm),
        ];
        double low = widths.Min() - fault.YMm - fault.WidthMm;
        return RollFault.Box(roll.LengthMm - last, low, fault.LengthMm, widths.Max() - fault.YMm - low);
    }

    // A layout that keeps stripes clear is of a felt that may not be turned: its stripes would lie at the other selvedge.
    private static bool IsToTurn(OrderRequest question, StockRoll roll)
    {
        CutDie[] dies = [.. question.Dies.Where(die => die.Serves(roll))];
        return roll.Nap == NapDirection.Backward
            && dies.Any(die => die.Shape.OneWay)
            && dies.All(die => die.Drawn is not { Layout.Rules.Forbidden.Count: > 0 });
    }

    private static StockRoll Turned(StockRoll roll) => roll with
    {
        Turned = true,
        Measured = roll.Measured is { } measured ? EndForEnd(measured, 1000 * roll.BeginM) : null,
        BeginM = 0,
    };

    private static NapDirection? Other(NapDirection? nap) => nap switch
    {
        NapDirection.Forward => NapDirection.Backward,
        NapDirection.Backward => NapDirection.Forward,
        _ => null,
    };

    private static NapDirection SideOf(OrderRequest question, CoverOrder order)
    {
        long against = Balls(question, order with { NapSide = NapDirection.Backward });
        return against > Balls(question, order with { NapSide = NapDirection.Forward }) ? NapDirection.Backward : NapDirection.Forward;
    }

    // What its felt would give, were it all for this order, up to what it wants: of its best lot where it is to be of one.
    private static long Balls(OrderRequest question, CoverOrder order)
    {
        IEnumerable<long> lots = question.Rolls.Concat(question.Offers.Select(offer => offer.Roll))
            .GroupBy(roll => order.OneLot ? $"{roll.Felt}\n{roll.Lot}" : string.Empty)
            .Select(lot => lot.Sum(roll => question.Dies
                .Where(die => question.Fits(order, roll, die))
                .Select(die => (long)die.Shape.BallsOf(die.Shape.StrikesIn(question.ClearM(roll)), question.GoodShare(roll, die)))
                .DefaultIfEmpty(0).Max()));
        return Math.Min(order.Balls, lots.DefaultIfEmpty(0).Max());
    }
}
