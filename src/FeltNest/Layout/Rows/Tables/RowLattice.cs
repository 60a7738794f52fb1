namespace FeltNest.Layout.Rows.Tables;

/// <summary>Parallel rows of parallel panels, each row the same step and shift from the one below.</summary>
internal sealed record RowLattice
{
    /// <summary>Tilt of every panel, radians.</summary>
    public required double Tilt { get; init; }

    /// <summary>How many rows.</summary>
    public required int Rows { get; init; }

    /// <summary>Step along a row, mm.</summary>
    public required double Pitch { get; init; }

    /// <summary>Shift along the roll from row to row, mm.</summary>
    public required double Shift { get; init; }

    /// <summary>Step across from row to row, mm.</summary>
    public required double Step { get; init; }

    /// <summary>Panels per mm of roll.</summary>
    internal double Density => Rows / Pitch;
}
