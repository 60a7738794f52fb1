namespace FeltNest.Cost.Compare.Findings;

/// <summary>An assumption that would make another row the cheapest.</summary>
/// <param name="Assumption">What it is, with its unit.</param>
/// <param name="Now">Its value now.</param>
/// <param name="At">The nearest value looked at where the cheapest row changes.</param>
/// <param name="Best">The row that is the cheapest there.</param>
/// <param name="IsStated">True where the value lies within a range the user stated.</param>
public sealed record RankFlip(string Assumption, double Now, double At, string Best, bool IsStated);
