namespace FeltNest.Layout.Scan;

/// <summary>A width at which, with a die designed anew for every width, the best number of rows changes.</summary>
public sealed record Crossover
{
    /// <summary>Roll width, mm, to a tenth of a mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Best number of rows just below.</summary>
    public required int RowsBelow { get; init; }

    /// <summary>Best number just above.</summary>
    public required int RowsAbove { get; init; }
}
