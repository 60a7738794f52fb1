namespace FeltNest.Cost.Usage;

/// <summary>What felt and balls are tied by: balls = metres x panels per metre x all of these / 2. Shares are 0 to 1.</summary>
/// <param name="AreaPerMetre">Width against that of the standard; 1 where felt is counted by the metre.</param>
/// <param name="Rows">Panels per metre that the width takes, against those of the layout.</param>
/// <param name="Lay">Panels cut against those that layout and length allow.</param>
/// <param name="Ends">Metres clear of ends and remnants.</param>
/// <param name="Faults">Panels cut without a fault.</param>
/// <param name="Rejects">Of those, panels that passed.</param>
/// <param name="Pairs">Of those, panels with a partner.</param>
internal sealed record UsageFactors(double AreaPerMetre, double Rows, double Lay, double Ends, double Faults, double Rejects, double Pairs)
{
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
