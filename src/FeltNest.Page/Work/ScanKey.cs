using FeltNest.Layout.Limits;

namespace FeltNest.Page.Work;

/// <summary>What a scan of widths depends on.</summary>
internal sealed record ScanKey(string Ball, double? WaistMm, double? EdgeLimitPercent, double GapMm, EdgeTrims Trims, double? WarpDeg, bool OneWay, double WidestMm);
