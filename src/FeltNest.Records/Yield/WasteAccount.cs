namespace FeltNest.Yield;

/// <summary>The closed account of the cloth in per cent of the full roll width; the four parts add to 100.</summary>
public sealed record WasteAccount
{
    /// <summary>Area of panels.</summary>
    public required double GoodPanelsPercent { get; init; }

    /// <summary>Web between panels.</summary>
    public required double BetweenPanelsPercent { get; init; }

    /// <summary>Usable width that no row reaches.</summary>
    public required double UnusedEdgePercent { get; init; }

    /// <summary>Both edge trims.</summary>
    public required double EdgeTrimPercent { get; init; }
}
