namespace FeltNest.Rolls.Orders.Begun;

/// <summary>What is left of rolls, dies and orders of which some is cut.</summary>
internal static class RestOf
{
    /// <summary>A roll of which only what lies behind a place is left. Of a roll that was turned end for end the measured places count from
    /// the other end: it is left as a roll that nobody measured, its nap turned.</summary>
    /// <param name="listed">The roll as the stock lists it.</param>
    /// <param name="planned">The roll as it was planned.</param>
    /// <param name="usableFromM">Where its usable felt begins, m on the roll as planned.</param>
    public static StockRoll Roll(StockRoll listed, StockRoll planned, double usableFromM)
    {
        double left = Math.Min(planned.EndM - usableFromM, listed.LengthM);
        StockRoll rest = listed with { LengthM = left, WidthMm = Width(listed, planned, usableFromM) };
        if (planned.Turned)
        {
            return rest with { Measured = null, BeginM = 0, Nap = planned.Nap is null ? null : NapDirection.Forward };
        }

        return listed.Measured is null ? rest : rest with { BeginM = listed.EndM - left };
    }

    /// <summary>A die that has made strikes: made first where it was not there, with new rules where its own did not last.</summary>
    /// <param name="die">The die before.</param>
    /// <param name="strikes">Strikes it has made.</param>
    /// <param name="start">First day of cutting, from which the days to make it count.</param>
    public static CutDie Die(CutDie die, long strikes, DateOnly start)
    {
        if (strikes == 0)
        {
            return die;
        }

        bool make = die.MakePrice is not null;
        long had = die.StrikesLeft + (make ? die.LifeStrikes : 0);
        long rules = Math.Max(0, (strikes - had + Math.Max(1, die.LifeStrikes) - 1) / Math.Max(1, die.LifeStrikes));
        return die with
        {
            StrikesLeft = (int)Math.Max(0, had + (rules * die.LifeStrikes) - strikes),
            MostReRules = (int)Math.Max(0, die.MostReRules - rules),
            MakePrice = null,
            MakeDays = 0,
            From = make && die.MakeDays > 0 ? start.AddDays(die.MakeDays) : die.From,
        };
    }

    /// <summary>An order that wants so many balls still. Where it is of one lot and some of it is cut, it stays in that lot.</summary>
    /// <param name="order">The order before.</param>
    /// <param name="balls">Balls it wants still.</param>
    /// <param name="cut">A roll it was cut from, or null.</param>
    public static CoverOrder Order(CoverOrder order, int balls, StockRoll? cut) => order.OneLot && cut is not null
        ? order with { Balls = balls, Felt = cut.Felt, Pins = (order.Pins ?? new OrderPins()) with { Lots = [cut.Lot] } }
        : order with { Balls = balls };

    // The least width measured on the rest, where the width in the list is not one of it.
    private static double Width(StockRoll listed, StockRoll planned, double usableFromM)
    {
        if (planned.Measured is not { } measured)
        {
            return listed.WidthMm;
        }

        double from = 1000 * usableFromM;
        double[] widths = [measured.WidthAt(from), .. measured.Widths.Where(w => w.XMm > from && w.XMm < measured.LengthMm)
            .Select(w => w.WidthMm), measured.WidthAt(measured.LengthMm)];
        return listed.WidthMm >= widths.Min() && listed.WidthMm <= widths.Max() ? listed.WidthMm : widths.Min();
    }
}
