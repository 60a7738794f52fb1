namespace FeltNest.Panel.Proven;

/// <summary>Which values of the ball are known and stay as the ball has them.</summary>
internal sealed record ProvenHold
{
    /// <summary>Nothing is held.</summary>
    public static readonly ProvenHold Nothing = new();

    /// <summary>The neutral layer.</summary>
    public bool NeutralLayer { get; init; }

    /// <summary>The waist, which any shop can measure on a ball.</summary>
    public bool Waist { get; init; }

    /// <summary>The edge limit.</summary>
    public bool EdgeLimit { get; init; }
}
