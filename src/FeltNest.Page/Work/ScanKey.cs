using FeltNest.Layout.Limits;
using FeltNest.Page.Inputs;

namespace FeltNest.Page.Work;

/// <summary>What a scan of widths depends on.</summary>
internal sealed record ScanKey(PageCover Cover, double GapMm, EdgeTrims Trims, double? WarpDeg, bool OneWay, double WidestMm);
