namespace FeltNest.Panel.Budget;

/// <summary>How a figure is spread over balls, mm.</summary>
internal sealed record GapSpread
{
    /// <summary>Mean.</summary>
    public required double MeanMm { get; init; }

    /// <summary>Standard deviation.</summary>
    public required double DeviationMm { get; init; }

    /// <summary>One ball in a hundred lies below.</summary>
    public required double Low1Mm { get; init; }

    /// <summary>Five in a hundred lie below.</summary>
    public required double Low5Mm { get; init; }

    /// <summary>Half of the balls lie below.</summary>
    public required double MiddleMm { get; init; }

    /// <summary>Five in a hundred lie above.</summary>
    public required double High5Mm { get; init; }

    /// <summary>One in a hundred lies above.</summary>
    public required double High1Mm { get; init; }
}
