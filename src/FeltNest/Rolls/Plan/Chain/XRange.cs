namespace FeltNest.Rolls.Plan.Chain;

/// <summary>A closed range along the roll, mm.</summary>
internal readonly record struct XRange(double From, double To);
