namespace FeltNest.Rolls.Orders;

/// <summary>What an order is held to, and what it is kept from. Of several names of one kind any serves; without a name all do.</summary>
internal sealed record OrderPins
{
    /// <summary>Shade lots it must be cut from.</summary>
    public IReadOnlyList<string> Lots { get; init; } = [];

    /// <summary>Rolls in stock, or offers, it must be cut from.</summary>
    public IReadOnlyList<string> Rolls { get; init; } = [];

    /// <summary>Presses it must be cut on.</summary>
    public IReadOnlyList<string> Presses { get; init; } = [];

    /// <summary>Dies it must be cut with.</summary>
    public IReadOnlyList<string> Dies { get; init; } = [];

    /// <summary>Shade lots it is kept from.</summary>
    public IReadOnlyList<string> NotLots { get; init; } = [];

    /// <summary>Rolls in stock, or offers, it is kept from.</summary>
    public IReadOnlyList<string> NotRolls { get; init; } = [];

    /// <summary>Presses it is kept from.</summary>
    public IReadOnlyList<string> NotPresses { get; init; } = [];

    /// <summary>Dies it is kept from.</summary>
    public IReadOnlyList<string> NotDies { get; init; } = [];

    /// <summary>Day on which it is to be cut, or null: nothing of it before 00:00 of that day, and what is cut later is late.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>True for the rest of a job that is begun: it comes first on its press.</summary>
    public bool First { get; init; }

    /// <summary>True where a roll and a die are allowed.</summary>
    public bool Takes(StockRoll roll, CutDie die) =>
        TakesRoll(roll) && Allowed(Lots, NotLots, roll.Lot) && Allowed(Dies, NotDies, die.Name);

    /// <summary>True where a roll is allowed by its name, or by the offer it would be bought from.</summary>
    public bool TakesRoll(StockRoll roll) =>
        (Rolls.Count == 0 || Rolls.Contains(roll.Name) || Rolls.Contains(roll.Offer))
            && !NotRolls.Contains(roll.Name) && !NotRolls.Contains(roll.Offer);

    /// <summary>True where a press is allowed.</summary>
    public bool Takes(PressSpec press) => Allowed(Presses, NotPresses, press.Name);

    private static bool Allowed(IReadOnlyList<string> held, IReadOnlyList<string> barred, string name) =>
        (held.Count == 0 || held.Contains(name)) && !barred.Contains(name);
}
