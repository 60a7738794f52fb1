namespace FeltNest.Cost.Compare.Findings;

/// <summary>An assumption that would make another row the cheapest.</summary>
public sealed record RankFlip
{
    /// <summary>What it is, with its unit.</summary>
    public required string Assumption { get; init; }

    /// <summary>Its value now.</summary>
    public required double Now { get; init; }

    /// <summary>The nearest value looked at where the cheapest row changes.</summary>
    public required double At { get; init; }

    /// <summary>The row that is the cheapest there.</summary>
    public required string Best { get; init; }

    /// <summary>True where the value lies within a range the user stated.</summary>
    public required bool IsStated { get; init; }
}
