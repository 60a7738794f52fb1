namespace FeltNest;

/// <summary>What of a question a fault is about. The library knows no option and no field of a form by name: whoever asked gives each of
/// these the name under which it was asked.</summary>
public enum AskedFor
{
    /// <summary>Width of the roll.</summary>
    RollWidth,

    /// <summary>Edge trims.</summary>
    EdgeTrims,

    /// <summary>Gap between panels.</summary>
    Gap,

    /// <summary>Angle to the warp.</summary>
    WarpAngle,

    /// <summary>Tolerance of that angle.</summary>
    WarpTolerance,

    /// <summary>Which tilts rows may have.</summary>
    Rows,

    /// <summary>Counted work.</summary>
    Effort,

    /// <summary>Number of bands.</summary>
    Bands,

    /// <summary>Forbidden stripes.</summary>
    ForbiddenStripes,

    /// <summary>Most panels of a die.</summary>
    DiePanels,

    /// <summary>Room of a die.</summary>
    DieBed,

    /// <summary>Least length of a repeat.</summary>
    LeastRepeat,

    /// <summary>Plies.</summary>
    Plies,

    /// <summary>Second part.</summary>
    SecondPart,

    /// <summary>Share of the second part.</summary>
    SecondShare,

    /// <summary>Waists of a study.</summary>
    Waists,

    /// <summary>Repeats that one strike cuts.</summary>
    RepeatsPerStrike,

    /// <summary>Die of a roll plan.</summary>
    RollDie,

    /// <summary>How far a roll can be moved to the side.</summary>
    SideShift,

    /// <summary>Where the plan of a roll begins.</summary>
    PlanFrom,

    /// <summary>Life of the die.</summary>
    DieLife,

    /// <summary>A die kept.</summary>
    KeptDie,

    /// <summary>Feed of a kept die.</summary>
    KeptFeed,

    /// <summary>Good balls that felt is bought for.</summary>
    Balls,

    /// <summary>Band of a die.</summary>
    Band,

    /// <summary>Part of a die.</summary>
    DiePart,

    /// <summary>List of offers.</summary>
    Offers,

    /// <summary>Values held in a fit.</summary>
    HeldValues,

    /// <summary>Resolution of a picture.</summary>
    Resolution,

    /// <summary>How a list writes its days.</summary>
    ListDays,

    /// <summary>Sheet of a workbook that holds a list.</summary>
    ListSheet,

    /// <summary>That what is asked about is meant as it stands, though it looks like a slip.</summary>
    Insisted,

    /// <summary>The cutting room's book.</summary>
    Book,

    /// <summary>That of a list brought in before the rest is brought in.</summary>
    BroughtInAgain,

    /// <summary>That a ticket comes back once more.</summary>
    MoreOfTicket,

    /// <summary>That orders which stand are changed.</summary>
    ChangedOrders,

    /// <summary>The roll that was really cut.</summary>
    CutRoll,

    /// <summary>Values set in an entry.</summary>
    SetValues,
}
