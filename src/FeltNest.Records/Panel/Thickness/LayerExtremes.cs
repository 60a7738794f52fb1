namespace FeltNest.Panel.Thickness;

/// <summary>Greatest stretch and greatest compression of one layer, per cent of flat length; negative where there is none.</summary>
public readonly record struct LayerExtremes
{
    /// <summary>100 (sphere/flat - 1) where that is greatest.</summary>
    public required double MaxStretchPercent { get; init; }

    /// <summary>100 (1 - sphere/flat) where that is greatest.</summary>
    public required double MaxCompressionPercent { get; init; }
}
