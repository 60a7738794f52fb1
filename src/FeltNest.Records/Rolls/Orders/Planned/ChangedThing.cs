namespace FeltNest.Rolls.Orders.Planned;

/// <summary>What of an order may be changed from plan to plan.</summary>
internal enum ChangedThing
{
    /// <summary>The rolls it is cut from.</summary>
    Roll,

    /// <summary>The presses it is cut on.</summary>
    Press,

    /// <summary>The dies it is cut with.</summary>
    Die,

    /// <summary>The day on which its last cover is cut.</summary>
    Day,
}
