using FeltNest.Rolls.Orders.Clock;

namespace FeltNest.Rolls.Orders;

/// <summary>The question: which rolls to cut for which order, with which die and on which press.</summary>
internal sealed record OrderRequest
{
    /// <summary>Orders.</summary>
    public required IReadOnlyList<CoverOrder> Orders { get; init; }

    /// <summary>Rolls in stock.</summary>
    public required IReadOnlyList<StockRoll> Rolls { get; init; }

    /// <summary>Felt that can be bought.</summary>
    public required IReadOnlyList<FeltPurchase> Offers { get; init; }

    /// <summary>Dies on the rack and dies that could be made.</summary>
    public required IReadOnlyList<CutDie> Dies { get; init; }

    /// <summary>Presses.</summary>
    public required IReadOnlyList<PressSpec> Presses { get; init; }

    /// <summary>What holds for all.</summary>
    public required OrderRules Rules { get; init; }

    /// <summary>Cloth of a roll between its two ends, m.</summary>
    public double ClearM(StockRoll roll) => roll.LengthM - (2 * Rules.EndLossMm / 1000);

    /// <summary>Share of the panels a die cuts from a roll that end on a ball, 0 to 1.</summary>
    public double GoodShare(StockRoll roll, CutDie die)
    {
        double whole = roll.MeasuredShares.TryGetValue(die.Name, out double measured) ? measured : 1 - (roll.FaultPercent / 100);
        return whole * (1 - (Rules.RejectPercent / 100)) * (1 - (Rules.UnpairedPercent / 100));
    }

    /// <summary>Whether an order is kept from felt that comes after its day.</summary>
    public bool InTime { get; init; }

    /// <summary>When a press runs: its own calendar, else the usual days of the plan.</summary>
    public PressCalendar CalendarOf(PressSpec press) => press.Calendar ?? PressCalendar.Usual(Rules.HoursPerDay);

    /// <summary>Hour from which on a roll can be cut: 00:00 of the day it comes.</summary>
    public double ThereFrom(StockRoll roll) => Rules.HourOf(roll.Received);

    /// <summary>Hour from which on a die can be mounted: 00:00 of its day, or of the day on which it is made.</summary>
    public double ThereFrom(CutDie die) => Math.Max(Rules.HourOf(die.From), die.MakePrice is null ? 0 : 24.0 * die.MakeDays);

    /// <summary>True where a die cuts an order's covers from a roll, one strike at least.</summary>
    public bool Fits(CoverOrder order, StockRoll roll, CutDie die) =>
        FitsButForNap(order, roll, die) && NapRule.Allows(Rules, order, roll, die);

    /// <summary>The same whichever way the nap lies.</summary>
    public bool FitsButForNap(CoverOrder order, StockRoll roll, CutDie die) =>
        die.Ball == order.Ball
            && (order.Felt is null || order.Felt == roll.Felt)
            && (!InTime || roll.Received is not { } day || day <= order.Due)
            && PinsAllow(order, roll, die)
            && die.Serves(roll)
            && die.Shape.StrikesIn(ClearM(roll)) > 0
            && GoodShare(roll, die) > 0;

    /// <summary>True where a press takes a die: by the list of its dies, or by its bed where it has none.</summary>
    public static bool Takes(PressSpec press, CutDie die) => press.Dies.Count > 0
        ? press.Dies.Contains(die.Name)
        : die.Shape.LengthMm <= press.Bed.BoardLengthMm + 1e-6 && die.Shape.AcrossMm <= press.Bed.BoardWidthMm + 1e-6;

    /// <summary>True where a press takes a die for an order.</summary>
    public static bool CutsOn(CoverOrder order, PressSpec press, CutDie die) =>
        Takes(press, die) && (order.Pins is null || order.Pins.Takes(press));

    /// <summary>True where one roll can stand for another in every way, for every order.</summary>
    public bool AreAlike(StockRoll roll, StockRoll other) =>
        roll.IsLike(other) && Orders.All(o => o.Pins is null || o.Pins.TakesRoll(roll) == o.Pins.TakesRoll(other));

    /// <summary>Strikes that an order alone needs of a die on a roll, were the roll long enough.</summary>
    public int StrikesFor(CoverOrder order, StockRoll roll, CutDie die) => StrikesFor(order.Balls, roll, die);

    /// <summary>Fewest strikes of a die on a roll that give so many balls, were the roll long enough.</summary>
    public int StrikesFor(int balls, StockRoll roll, CutDie die)
    {
        double share = GoodShare(roll, die);
        int strikes = (int)Math.Ceiling((balls / die.Shape.BallsPerStrike(share)) - 1e-9);
        while (die.Shape.BallsOf(strikes, share) < balls)
        {
            strikes++;
        }

        return strikes;
    }

    /// <summary>Least strikes in one piece of an order.</summary>
    public int LeastStrikes(CoverOrder order, StockRoll roll, CutDie die)
    {
        int enough = (int)Math.Max(1, Math.Ceiling(((1000 * Rules.LeastCutM) - die.Shape.OverMm - 1e-6) / die.Shape.FeedMm));
        return Math.Min(enough, StrikesFor(order, roll, die));
    }

    // A press it may be cut on takes the die.
    private bool PinsAllow(CoverOrder order, StockRoll roll, CutDie die) =>
        order.Pins is not { } pins || (pins.Takes(roll, die) && Presses.Any(press => CutsOn(order, press, die)));
}
