namespace FeltNest.Die.Board;

/// <summary>What a laser cuts and engraves of a board, kerf taken off, in the frame of what is drawn: x right, y up, from the board's lower
/// left corner. The pieces of a board that is split stand apart.</summary>
public sealed record BoardCut
{
    /// <summary>Layer of the slots: closed lines.</summary>
    public const string Slot = "SLOT";

    /// <summary>Layer of the board's own outline.</summary>
    public const string Outside = "BOARD";

    /// <summary>Layer of register pins.</summary>
    public const string Pin = "PIN";

    /// <summary>Layer of screws.</summary>
    public const string Screw = "SCREW";

    /// <summary>Layer of air holes.</summary>
    public const string Air = "AIR";

    /// <summary>Layer of the middle lines of dowels, drilled by hand: neither cut nor engraved.</summary>
    public const string Dowel = "DOWEL";

    /// <summary>Layer of engraving in single strokes.</summary>
    public const string Engrave = "ENGRAVE";

    /// <summary>Layer of words for people.</summary>
    public const string Note = "NOTE";

    /// <summary>Least board between a hole and a slot, mm.</summary>
    public const double ClearMm = 2;

    /// <summary>Distance at which the pieces of a split board are drawn, mm.</summary>
    public const double ApartMm = 20;

    /// <summary>Lines: slots, outlines, dowels, strokes.</summary>
    public required IReadOnlyList<BoardLine> Lines { get; init; }

    /// <summary>Round holes.</summary>
    public required IReadOnlyList<BoardHole> Holes { get; init; }

    /// <summary>Words to engrave.</summary>
    public required IReadOnlyList<BoardLabel> Labels { get; init; }

    /// <summary>Where the board is split, mm from its left or lower side.</summary>
    public required IReadOnlyList<double> Splits { get; init; }

    /// <summary>Whether splits run across x, else across y.</summary>
    public required bool SplitsAlongX { get; init; }

    /// <summary>Extent of what is drawn along x, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Along y, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>What was asked for and found no room, in words.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }
}
