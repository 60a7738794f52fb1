namespace FeltNest.Rolls.Plan;

/// <summary>Where to strike one roll.</summary>
/// <param name="Request">The question.</param>
/// <param name="Pattern">What one strike cuts.</param>
/// <param name="Grid">Places strikes may have: no other choice among them has more good panels.</param>
/// <param name="Strikes">Strikes in order along the roll.</param>
/// <param name="BackToBackGoodPanels">Good panels of strikes one feed apart from the start, none of them moved.</param>
/// <param name="ClearAdvanceMm">Advance from which a strike is clear of the one before it whatever their shifts, mm.</param>
/// <param name="LeastOffLineMm">Least advance off the line that was thought of, mm: the feed, or more where three strikes in a row could
/// meet.</param>
public sealed record RollPlan(
    RollRequest Request, StrikePattern Pattern, StrikeGrid Grid, IReadOnlyList<PlannedStrike> Strikes, int BackToBackGoodPanels,
    double ClearAdvanceMm,
    double LeastOffLineMm)
{
    /// <summary>Good panels of all strikes.</summary>
    public int GoodPanels => Strikes.Sum(s => s.GoodPanels);

    /// <summary>Lost panels of all strikes for one cause.</summary>
    public int LostPanels(LossCause cause) => Strikes.Sum(s => s.Lost.Count(l => l.Cause == cause));

    /// <summary>Balls the good panels cover: pairs of one part at one angle to the warp.</summary>
    public int Balls =>
        PanelClasses.Of(Pattern, Request.Layout.Rules.OneWay)
            .Sum(one => Strikes.Sum(s => one.Count - s.Lost.Count(l => one.Contains(l.Panel))) / 2);
}
