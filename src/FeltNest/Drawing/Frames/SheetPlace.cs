namespace FeltNest.Drawing.Frames;

/// <summary>Where a sheet stands in a set.</summary>
internal readonly record struct SheetPlace
{
    /// <summary>From 1.</summary>
    public required int Number { get; init; }

    /// <summary>Sheets in the set.</summary>
    public required int Count { get; init; }

    /// <summary>Scale as written.</summary>
    public required string Scale { get; init; }

    /// <summary>What it shows, for the supplementary title where none is given.</summary>
    public required string Part { get; init; }
}
