namespace FeltNest.Rolls.Orders.Planned;

/// <summary>A die put on a press.</summary>
internal sealed record Mounting
{
    /// <summary>The die.</summary>
    public required CutDie Die { get; init; }

    /// <summary>The press.</summary>
    public required PressSpec Press { get; init; }

    /// <summary>When it begins, hours since 00:00 of the first day of cutting.</summary>
    public required double StartHour { get; init; }

    /// <summary>When it ends.</summary>
    public required double EndHour { get; init; }

    /// <summary>False for a die that stood on the press already: it takes no time and costs nothing.</summary>
    public required bool Paid { get; init; }
}
