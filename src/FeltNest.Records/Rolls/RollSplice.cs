namespace FeltNest.Rolls;

/// <summary>A splice across the whole width of a roll. A panel that it runs through is lost; where it has a length to stay clear of, no
/// strike is made that touches that length.</summary>
public readonly record struct RollSplice
{
    /// <summary>Where it lies along the roll, mm.</summary>
    public required double XMm { get; init; }

    /// <summary>Length on each side that no strike may touch, mm; 0 where a strike may go through the splice.</summary>
    public double ClearMm { get; init; }

    /// <summary>Where the felt to stay clear of begins, mm.</summary>
    public double FromMm => XMm - ClearMm;

    /// <summary>Where it ends, mm.</summary>
    public double ToMm => XMm + ClearMm;
}
