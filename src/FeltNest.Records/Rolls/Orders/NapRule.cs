namespace FeltNest.Rolls.Orders;

/// <summary>Which rolls a one-way layout may be cut from together.</summary>
internal static class NapRule
{
    /// <summary>The way the nap of a roll lies under a die of a one-way layout; null where the layout is not one-way and any roll serves.
    /// A roll whose nap nobody stated counts as lying with the feed.</summary>
    public static NapDirection? GroupOf(StockRoll roll, CutDie die) => die.Shape.OneWay ? DirectionOf(roll) : null;

    /// <summary>True where an order may be cut from a roll with a die.</summary>
    public static bool Allows(OrderRules rules, CoverOrder order, StockRoll roll, CutDie die) => (rules.Nap, GroupOf(roll, die)) switch
    {
        (_, null) => true,
        (NapHandling.Turn, { } lies) => lies == NapDirection.Forward,
        (_, { } lies) => order.NapSide is null || order.NapSide == lies,
    };

    private static NapDirection DirectionOf(StockRoll roll) =>
        (roll.Nap == NapDirection.Backward) != roll.Turned ? NapDirection.Backward : NapDirection.Forward;
}
