namespace FeltNest.Die.Order;

/// <summary>The board that holds the rules.</summary>
public sealed record DieBoard
{
    /// <summary>In words.</summary>
    public required string Material { get; init; }

    /// <summary>mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Board left outside the outermost edge, mm.</summary>
    public required double LandMm { get; init; }

    /// <summary>For the mass of the die, kg/m3.</summary>
    public required double DensityKgPerM3 { get; init; }

    /// <summary>Length of edge to one bridge, mm.</summary>
    public required double BridgeEveryMm { get; init; }

    /// <summary>How it is cut on a laser; null where the shop does not say.</summary>
    public BoardLaser? Laser { get; init; }

    /// <summary>Length of a bridge, mm.</summary>
    public required double BridgeMm { get; init; }
}
