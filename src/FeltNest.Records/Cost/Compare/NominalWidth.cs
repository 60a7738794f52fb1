namespace FeltNest.Cost.Compare;

/// <summary>A felt laid over its nominal width.</summary>
public sealed record NominalWidth
{
    /// <summary>Nominal width, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Panels per metre on it.</summary>
    public required double PanelsPerMetre { get; init; }

    /// <summary>Square metres bought.</summary>
    public required double SquareMetresPerThousandBalls { get; init; }

    /// <summary>Cost of a thousand balls, or null.</summary>
    public required decimal? Total { get; init; }
}
