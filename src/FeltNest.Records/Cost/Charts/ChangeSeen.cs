namespace FeltNest.Cost.Charts;

/// <summary>What a lasting change of felt a thousand balls takes to be told from noise.</summary>
internal sealed record ChangeSeen
{
    /// <summary>The change, %.</summary>
    public required double Percent { get; init; }

    /// <summary>The same in standard deviations of one ticket.</summary>
    public required double Sigmas { get; init; }

    /// <summary>Tickets, on average, until one lies outside the limits.</summary>
    public required double Tickets { get; init; }

    /// <summary>Standard deviation of one ticket that counting alone explains, %.</summary>
    public required double CountingPercent { get; init; }
}
