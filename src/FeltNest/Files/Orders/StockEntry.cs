using FeltNest.Cost.Offers;
using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>A line of a stock list: the roll, and what the list alone says of it.</summary>
internal sealed record StockEntry
{
    /// <summary>The roll.</summary>
    public required StockRoll Roll { get; init; }

    /// <summary>Whether it may be cut.</summary>
    public required bool Available { get; init; }

    /// <summary>Its price as it was listed.</summary>
    public required FeltPrice Price { get; init; }

    /// <summary>Mass per area, g/m2, or null.</summary>
    public double? MassPerAreaGsm { get; init; }

    /// <summary>Panels lost to faults, %, as it was listed; null where the costs say it.</summary>
    public double? FaultPercent { get; init; }

    /// <summary>File of the roll as measured, or null.</summary>
    public string? MeasuredFile { get; init; }
}
