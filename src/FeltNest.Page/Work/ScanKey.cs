using FeltNest.Layout.Limits;
using FeltNest.Page.Inputs;

namespace FeltNest.Page.Work;

/// <summary>What a scan of widths depends on.</summary>
internal sealed record ScanKey
{
    public required PageCover Cover { get; init; }

    public required double GapMm { get; init; }

    public required EdgeTrims Trims { get; init; }

    public required double? WarpDeg { get; init; }

    public required bool OneWay { get; init; }

    public required double WidestMm { get; init; }
}
