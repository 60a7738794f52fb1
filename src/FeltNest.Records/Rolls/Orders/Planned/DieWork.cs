namespace FeltNest.Rolls.Orders.Planned;

/// <summary>What a die does in a plan.</summary>
/// <param name="Die">The die.</param>
/// <param name="Press">The first press it stands on.</param>
/// <param name="Strikes">Strikes it makes.</param>
internal sealed record DieWork(CutDie Die, PressSpec Press, int Strikes)
{
    /// <summary>How often it is mounted.</summary>
    public int Mountings { get; init; } = 1;

    /// <summary>Whether it must be made first.</summary>
    public bool Make => Die.MakePrice is not null;

    /// <summary>How often it must get a new rule.</summary>
    public int ReRules =>
        (int)Math.Max(0, Math.Ceiling((Strikes - Die.StrikesLeft - (Make ? Die.LifeStrikes : 0)) / (double)Math.Max(1, Die.LifeStrikes)));

    /// <summary>Strikes left in its rule afterwards.</summary>
    public int StrikesAfter => Die.StrikesLeft + (Make ? Die.LifeStrikes : 0) + (ReRules * Die.LifeStrikes) - Strikes;

    /// <summary>What making and ruling it cost.</summary>
    public decimal Price => (Make ? Die.MakePrice!.Value : 0) + (ReRules * Die.ReRulePrice);
}
