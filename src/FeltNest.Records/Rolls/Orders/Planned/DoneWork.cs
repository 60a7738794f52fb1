namespace FeltNest.Rolls.Orders.Planned;

/// <summary>What is cut of one piece of a plan.</summary>
internal sealed record DoneWork
{
    /// <summary>The piece as it was planned.</summary>
    public required OrderCut Cut { get; init; }

    /// <summary>Strikes made.</summary>
    public required int Strikes { get; init; }

    /// <summary>Good balls they gave.</summary>
    public required int Balls { get; init; }

    /// <summary>Name of the roll it was cut from.</summary>
    public required string Roll { get; init; }

    /// <summary>Where that roll is usable from, m on the roll as planned.</summary>
    public required double UsableFromM { get; init; }

    /// <summary>True where the job is begun and not over.</summary>
    public bool IsBegun => Strikes > 0 && Strikes < Cut.Strikes;
}
