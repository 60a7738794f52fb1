namespace FeltNest.Rolls.Orders;

/// <summary>A roll that is in stock or could be bought.</summary>
/// <param name="Name">Name or number of the roll, once in a list.</param>
/// <param name="Felt">Felt.</param>
/// <param name="Lot">Shade lot.</param>
/// <param name="WidthMm">Width that can be relied on, mm.</param>
/// <param name="LengthM">Length that is left, m.</param>
/// <param name="PricePerMetre">Price of a running metre, in the plan's currency.</param>
/// <param name="FaultPercent">Panels lost to faults, per cent of all panels cut, where the roll was not measured.</param>
/// <param name="Received">Day it came, or null.</param>
/// <param name="Offer">Offer it would be bought from, or null for a roll in stock.</param>
public sealed record StockRoll(
    string Name, string Felt, string Lot, double WidthMm, double LengthM, decimal PricePerMetre, double FaultPercent, DateOnly? Received,
    string? Offer)
{
    /// <summary>The roll as measured, or null.</summary>
    public FeltRoll? Measured { get; init; }

    /// <summary>Share of the panels struck that are good, 0 to 1, by the name of the die, where strikes were planned on the measured
    /// roll.</summary>
    public IReadOnlyDictionary<string, double> MeasuredShares { get; init; } = new Dictionary<string, double>();

    /// <summary>Where its whole cloth begins on the roll as measured, m: what lies before was cut earlier. Places on the roll count from
    /// the measured start.</summary>
    public double BeginM { get; init; }

    /// <summary>Where it ends, m.</summary>
    public double EndM => BeginM + LengthM;

    /// <summary>True where another roll can stand for this one in every way.</summary>
    internal bool IsLike(StockRoll other) =>
        Measured is null && other.Measured is null && MeasuredShares.Count == 0 && other.MeasuredShares.Count == 0
        && this with { Name = other.Name, MeasuredShares = other.MeasuredShares } == other;
}
