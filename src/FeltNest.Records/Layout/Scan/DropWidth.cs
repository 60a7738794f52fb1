namespace FeltNest.Layout.Scan;

/// <summary>The least roll on which a kept die still cuts a number of rows.</summary>
public sealed record DropWidth
{
    /// <summary>Rows.</summary>
    public required int Rows { get; init; }

    /// <summary>Least roll width, edge trims included, mm, exact but for rounding.</summary>
    public required double LeastWidthMm { get; init; }

    /// <summary>Panels per metre of roll with these rows.</summary>
    public required double PanelsPerMetre { get; init; }
}
