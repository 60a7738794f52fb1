namespace FeltNest.Panel.Budget;

/// <summary>A tolerance of the ball that moves the gap round the seam.</summary>
internal sealed record GapSource
{
    /// <summary>Field of the ball file.</summary>
    public required string Field { get; init; }

    /// <summary>What is off, in words.</summary>
    public required string Words { get; init; }

    /// <summary>Unit of the tolerance; empty for a share.</summary>
    public required string Unit { get; init; }

    /// <summary>The tolerance.</summary>
    public required double PlusMinus { get; init; }
}
