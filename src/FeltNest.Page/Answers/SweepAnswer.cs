namespace FeltNest.Page.Answers;

/// <summary>A point of the chart of widths; waste in per cent of the full width, null where nothing fits.</summary>
internal sealed record SweepAnswer
{
    /// <summary>The width, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Per cent of the full width, or null where nothing fits.</summary>
    public required double? WastePercent { get; init; }

    /// <summary>The least width of the whole chart, mm.</summary>
    public required double FromMm { get; init; }

    /// <summary>The greatest width of the whole chart, mm.</summary>
    public required double ToMm { get; init; }
}
