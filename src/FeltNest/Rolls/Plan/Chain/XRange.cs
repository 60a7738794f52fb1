namespace FeltNest.Rolls.Plan.Chain;

/// <summary>A closed range along the roll, mm.</summary>
internal readonly record struct XRange
{
    public required double From { get; init; }

    public required double To { get; init; }
}
