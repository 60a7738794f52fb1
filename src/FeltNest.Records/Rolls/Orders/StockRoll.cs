namespace FeltNest.Rolls.Orders;

/// <summary>A roll that is in stock or could be bought.</summary>
internal sealed record StockRoll
{
    /// <summary>Name or number of the roll, once in a list.</summary>
    public required string Name { get; init; }

    /// <summary>Felt.</summary>
    public required string Felt { get; init; }

    /// <summary>Shade lot.</summary>
    public required string Lot { get; init; }

    /// <summary>Width that can be relied on, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Length that is left, m.</summary>
    public required double LengthM { get; init; }

    /// <summary>Price of a running metre, in the plan's currency.</summary>
    public required decimal PricePerMetre { get; init; }

    /// <summary>Panels lost to faults, per cent of all panels cut, where the roll was not measured.</summary>
    public required double FaultPercent { get; init; }

    /// <summary>Day it came or will come, or null for one that is there; it can be cut from 00:00 of that day on.</summary>
    public required DateOnly? Received { get; init; }

    /// <summary>Offer it would be bought from, or null for a roll in stock.</summary>
    public required string? Offer { get; init; }

    /// <summary>The roll as measured, or null.</summary>
    public FeltRoll? Measured { get; init; }

    /// <summary>Share of the panels struck that are good, 0 to 1, by the name of the die, where strikes were planned on the measured
    /// roll.</summary>
    public IReadOnlyDictionary<string, double> MeasuredShares { get; init; } = new Dictionary<string, double>();

    /// <summary>Where its whole cloth begins on the roll as measured, m: what lies before was cut earlier. Places on the roll count from
    /// the measured start.</summary>
    public double BeginM { get; init; }

    /// <summary>Which way the nap lies on the roll as it stands in stock, or null where nobody said.</summary>
    public NapDirection? Nap { get; init; }

    /// <summary>True where it is turned end for end before it is cut: places on it count from what was its end, and what was its upper
    /// selvedge runs along the guide.</summary>
    public bool Turned { get; init; }

    /// <summary>Where it ends, m.</summary>
    public double EndM => BeginM + LengthM;

    /// <summary>Greatest width of what is left, mm: as measured, or the width that can be relied on where nobody measured.</summary>
    public double WidestMm => Measured is not { } roll
        ? WidthMm
        : roll.Widths.Where(w => w.XMm > 1000 * BeginM && w.XMm < roll.LengthMm).Select(w => w.WidthMm)
            .Append(roll.WidthAt(1000 * BeginM)).Append(roll.WidthAt(roll.LengthMm)).Max();

    /// <summary>True where another roll can stand for this one in every way.</summary>
    internal bool IsLike(StockRoll other) =>
        Measured is null && other.Measured is null && MeasuredShares.Count == 0 && other.MeasuredShares.Count == 0
        && this with { Name = other.Name, MeasuredShares = other.MeasuredShares } == other;
}
