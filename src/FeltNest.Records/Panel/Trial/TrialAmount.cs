namespace FeltNest.Panel.Trial;

/// <summary>An amount found from readings.</summary>
internal sealed record TrialAmount
{
    /// <summary>The amount, mm.</summary>
    public required double Mm { get; init; }

    /// <summary>Its standard uncertainty.</summary>
    public required double SpreadMm { get; init; }

    /// <summary>Half of the interval that holds the true amount in 95 of 100 trials: the spread times the factor of Student's t.</summary>
    public required double IntervalMm { get; init; }

    /// <summary>Nothing, for certain.</summary>
    public static TrialAmount None { get; } = new() { Mm = 0, SpreadMm = 0, IntervalMm = 0 };

    /// <summary>Whether the interval leaves out 0.</summary>
    public bool IsFound => Math.Abs(Mm) > IntervalMm;
}
