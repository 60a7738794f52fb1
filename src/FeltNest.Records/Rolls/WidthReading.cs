namespace FeltNest.Rolls;

/// <summary>The width of a roll measured at one place.</summary>
public readonly record struct WidthReading
{
    /// <summary>Along the roll, mm.</summary>
    public required double XMm { get; init; }

    /// <summary>Both selvedges included, mm.</summary>
    public required double WidthMm { get; init; }
}
