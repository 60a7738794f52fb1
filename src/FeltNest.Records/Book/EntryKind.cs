namespace FeltNest.Book;

/// <summary>What an entry of the cutting room's book tells.</summary>
internal enum EntryKind
{
    /// <summary>A roll came into stock.</summary>
    RollReceived,

    /// <summary>A roll was measured: what is left of it, its width, or its file of faults.</summary>
    RollMeasured,

    /// <summary>Felt was cut from a roll without a ticket.</summary>
    RollCut,

    /// <summary>A roll went back to stock.</summary>
    RollPutBack,

    /// <summary>Felt of a roll was thrown away.</summary>
    RollScrapped,

    /// <summary>A die was written down: on the rack, or one that can be made.</summary>
    DieMade,

    /// <summary>A die that was to be made is there.</summary>
    DieReady,

    /// <summary>A die was put on a press.</summary>
    DieMounted,

    /// <summary>A die was struck without a ticket.</summary>
    DieStruck,

    /// <summary>A die got new rules.</summary>
    DieRuledAgain,

    /// <summary>An order was taken.</summary>
    OrderTaken,

    /// <summary>An order was changed.</summary>
    OrderChanged,

    /// <summary>Nothing more is cut for an order.</summary>
    OrderClosed,

    /// <summary>A ticket was printed.</summary>
    TicketPrinted,

    /// <summary>A ticket came back, filled in.</summary>
    TicketFilledIn,

    /// <summary>A plan was made.</summary>
    PlanMade,

    /// <summary>A plan was taken: its tickets stand, those that no press has begun are withdrawn.</summary>
    PlanTaken,

    /// <summary>A standard was set: felt promised for a ball from a day on.</summary>
    StandardSet,

    /// <summary>A list was brought in.</summary>
    ListBroughtIn,

    /// <summary>The last act was taken back.</summary>
    Undone,
}
