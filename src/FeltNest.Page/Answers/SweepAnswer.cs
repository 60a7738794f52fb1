namespace FeltNest.Page.Answers;

/// <summary>A point of the chart of widths; waste in per cent of the full width, null where nothing fits.</summary>
internal sealed record SweepAnswer(double WidthMm, double? WastePercent);
