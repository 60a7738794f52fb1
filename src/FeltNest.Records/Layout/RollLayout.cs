using FeltNest.Layout.Limits;

namespace FeltNest.Layout;

/// <summary>Parts laid over a roll width. Roll frame: x along the feed (the warp), y across from the lower selvedge, seen from the nap
/// side.</summary>
public sealed record RollLayout
{
    /// <summary>Parts used.</summary>
    public required IReadOnlyList<LayoutPart> Parts { get; init; }

    /// <summary>Width of the roll, mm.</summary>
    public required double RollWidthMm { get; init; }

    /// <summary>Edge trims.</summary>
    public required EdgeTrims Trims { get; init; }

    /// <summary>Gap promised, mm.</summary>
    public required double GapMm { get; init; }

    /// <summary>Rules kept.</summary>
    public required LayoutRules Rules { get; init; }

    /// <summary>Bands over the width, lowest first: one, over the usable width, where the whole lay shares a repeat.</summary>
    public required IReadOnlyList<LayoutBand> Bands { get; init; }

    /// <summary>How it was found.</summary>
    public required SearchRecord Search { get; init; }

    /// <summary>Roll width less both edge trims, mm.</summary>
    public double UsableWidthMm => RollWidthMm - Trims.TotalMm;

    /// <summary>Panels per metre of roll, all bands together.</summary>
    public double PanelsPerMetre => Bands.Sum(band => 1000 * band.Repeat.Panels.Count / band.Repeat.LengthMm);
}
