using FeltNest.Ball;

namespace FeltNest.Design;

/// <summary>What a design of seams is asked.</summary>
internal sealed record SeamQuestion
{
    /// <summary>The ball; its seam is replaced.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>Limits of stretch, per cent, least first.</summary>
    public required IReadOnlyList<double> StretchLimitsPercent { get; init; }

    /// <summary>The other limits; its limit of stretch is not used.</summary>
    public required SeamLimits Limits { get; init; }

    /// <summary>How many waves the seam may have beside its waist.</summary>
    public required int Waves { get; init; }

    /// <summary>Whether the seam may leave its mirrors and keep the half-turns alone.</summary>
    public required bool Unmirrored { get; init; }

    /// <summary>Whether the panel's angle to the warp is a number of the design too; on a roll the panels lie at that angle.</summary>
    public required bool TurnsWarp { get; init; }
}
