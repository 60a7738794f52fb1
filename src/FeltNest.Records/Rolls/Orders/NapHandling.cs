namespace FeltNest.Rolls.Orders;

/// <summary>What is done with rolls whose nap lies against the feed where a layout is one-way.</summary>
internal enum NapHandling
{
    /// <summary>They are turned end for end, so that their nap lies with the feed.</summary>
    Turn,

    /// <summary>They stay as they lie, and no order is cut from rolls of both directions.</summary>
    Apart,
}
