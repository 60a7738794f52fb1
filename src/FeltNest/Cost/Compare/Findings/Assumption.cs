namespace FeltNest.Cost.Compare.Findings;

/// <summary>A figure that a comparison rests on.</summary>
/// <param name="Words">What it is, with its unit.</param>
/// <param name="Now">Its value.</param>
/// <param name="Low">Least value looked at.</param>
/// <param name="High">Greatest value looked at.</param>
/// <param name="IsStated">True where the user gave low and high.</param>
/// <param name="At">What changes where it has another value.</param>
internal sealed record Assumption(string Words, double Now, double Low, double High, bool IsStated, Func<double, PriceChange> At);
