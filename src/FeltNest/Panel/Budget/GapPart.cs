using FeltNest.Ball;

namespace FeltNest.Panel.Budget;

/// <summary>One thing that may be off: its tolerance, and what a ball or its placing is with it off.</summary>
internal sealed record GapPart
{
    /// <summary>The tolerance.</summary>
    public required GapSource Source { get; init; }

    /// <summary>The ball with the part off by an amount; null for a part of the placing.</summary>
    public Func<BallSpec, double, BallSpec>? Ball { get; init; }

    /// <summary>The placing of one panel that is off by an amount on a sphere of a radius; null for a part of the ball.</summary>
    public Func<double, double, PanelPlacing>? Placing { get; init; }
}
