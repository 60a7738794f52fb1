namespace FeltNest.Panel.Trial;

/// <summary>An amount found from readings.</summary>
/// <param name="Mm">The amount, mm.</param>
/// <param name="SpreadMm">Its standard uncertainty.</param>
/// <param name="IntervalMm">Half of the interval that holds the true amount in 95 of 100 trials: the spread times the factor of Student's
/// t.</param>
internal sealed record TrialAmount(double Mm, double SpreadMm, double IntervalMm)
{
    /// <summary>Whether the interval leaves out 0.</summary>
    public bool IsFound => Math.Abs(Mm) > IntervalMm;
}
