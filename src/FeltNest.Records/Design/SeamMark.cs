using FeltNest.Ball;

namespace FeltNest.Design;

/// <summary>The least felt found for a family of seams at one limit of stretch.</summary>
internal sealed record SeamMark
{
    /// <summary>Greatest stretch allowed, per cent.</summary>
    public required double StretchLimitPercent { get; init; }

    /// <summary>Family of the seam.</summary>
    public required SeamFamily Curve { get; init; }

    /// <summary>The seam with the least felt in the endless plane.</summary>
    public required SeamChoice Plane { get; init; }

    /// <summary>The seam with the least felt on the roll; it may be the same.</summary>
    public required SeamChoice Roll { get; init; }
}
