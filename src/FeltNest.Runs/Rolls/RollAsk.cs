namespace FeltNest.Runs.Rolls;

/// <summary>Which roll is to be cut how.</summary>
internal sealed record RollAsk
{
    /// <summary>File of the layout.</summary>
    public required string LayoutFile { get; init; }

    /// <summary>File of the roll.</summary>
    public required string RollFile { get; init; }

    /// <summary>Repeats one strike cuts; null for one, or what the die says.</summary>
    public int? Repeats { get; init; }

    /// <summary>File of the die, or null.</summary>
    public string? DieFile { get; init; }

    /// <summary>How far the roll can be moved to either side, mm.</summary>
    public double SideShiftMm { get; init; }

    /// <summary>Where the plan begins, mm from the start of the roll.</summary>
    public double FromMm { get; init; }

    /// <summary>Band of the layout that is struck, counted from 1, with a die of its own; null for the whole width.</summary>
    public int? Band { get; init; }

    /// <summary>True where the last strike may reach past the end of the roll.</summary>
    public bool PastEnd { get; init; }

    /// <summary>Paper of the map in print: <c>A3</c> or <c>A4</c>.</summary>
    public string Paper { get; init; } = "A3";
}
