namespace FeltNest.Cost.Usage;

/// <summary>What felt and balls are tied by: balls = metres x panels per metre x all of these / 2. Shares are 0 to 1.</summary>
internal sealed record UsageFactors
{
    /// <summary>Width against that of the standard; 1 where felt is counted by the metre.</summary>
    public required double AreaPerMetre { get; init; }

    /// <summary>Panels per metre that the width takes, against those of the layout.</summary>
    public required double Rows { get; init; }

    /// <summary>Panels cut against those that layout and length allow.</summary>
    public required double Lay { get; init; }

    /// <summary>Metres clear of ends and remnants.</summary>
    public required double Ends { get; init; }

    /// <summary>Panels cut without a fault.</summary>
    public required double Faults { get; init; }

    /// <summary>Of those, panels that passed.</summary>
    public required double Rejects { get; init; }

    /// <summary>Of those, panels with a partner.</summary>
    public required double Pairs { get; init; }

    /// <summary>Natural logarithm of what a cause makes the felt grow by.</summary>
    public double LogOf(UsageCause cause) => cause switch
    {
        UsageCause.Width => Math.Log(AreaPerMetre / Rows),
        UsageCause.Lay => -Math.Log(Lay),
        UsageCause.RollEnds => -Math.Log(Ends),
        UsageCause.Faults => -Math.Log(Faults),
        UsageCause.Rejects => -Math.Log(Rejects),
        UsageCause.Unpaired => -Math.Log(Pairs),
        _ => 0,
    };

    /// <summary>Share lost to a cause, %, or null where it has none.</summary>
    public double? LostPercent(UsageCause cause) => cause switch
    {
        UsageCause.Lay => 100 * (1 - Lay),
        UsageCause.RollEnds => 100 * (1 - Ends),
        UsageCause.Faults => 100 * (1 - Faults),
        UsageCause.Rejects => 100 * (1 - Rejects),
        UsageCause.Unpaired => 100 * (1 - Pairs),
        _ => null,
    };
}
