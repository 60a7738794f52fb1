namespace FeltNest.Rolls.Plan;

/// <summary>Where to strike one roll.</summary>
public sealed record RollPlan
{
    /// <summary>The question.</summary>
    public required RollRequest Request { get; init; }

    /// <summary>What one strike cuts.</summary>
    public required StrikePattern Pattern { get; init; }

    /// <summary>Places strikes may have: no other choice among them has more good panels.</summary>
    public required StrikeGrid Grid { get; init; }

    /// <summary>Strikes in order along the roll.</summary>
    public required IReadOnlyList<PlannedStrike> Strikes { get; init; }

    /// <summary>Good panels of strikes one feed apart from the start, none of them moved.</summary>
    public required int BackToBackGoodPanels { get; init; }

    /// <summary>Advance from which a strike is clear of the one before it whatever their shifts, mm.</summary>
    public required double ClearAdvanceMm { get; init; }

    /// <summary>Least advance off the line that was thought of, mm: the feed, or more where three strikes in a row could
    /// meet.</summary>
    public required double LeastOffLineMm { get; init; }

    /// <summary>What a layout made for this roll would give more; null where it was not asked, or gives no more.</summary>
    public BetterLayout? Better { get; init; }

    /// <summary>How far the last strike reaches past the end of the roll, mm; 0 where it does not.</summary>
    public double OverhangMm
    {
        get
        {
            double over = Strikes.Count == 0 ? 0 : Strikes[^1].XMm + Pattern.LengthMm - Request.Roll.LengthMm;
            return over > SlackMm ? over : 0;
        }
    }

    // A strike that ends this little past the roll's end ends at it, mm: rounding of a layout's own digits.
    private const double SlackMm = 1e-6;

    /// <summary>Good panels of all strikes.</summary>
    public int GoodPanels => Strikes.Sum(s => s.GoodPanels);

    /// <summary>Lost panels of all strikes for one cause.</summary>
    public int LostPanels(LossCause cause) => Strikes.Sum(s => s.Lost.Count(l => l.Cause == cause));

    /// <summary>Balls the good panels cover: pairs of one part at one angle to the warp.</summary>
    public int Balls => Yields.Sum(part => part.Balls);

    /// <summary>Good panels and balls of each part, in the order of the layout's parts.</summary>
    public IReadOnlyList<PartYield> Yields
    {
        get
        {
            int[] lost = new int[Pattern.Panels.Count];
            foreach (LostPanel panel in Strikes.SelectMany(s => s.Lost))
            {
                lost[panel.Panel]++;
            }

            (int Part, int Good)[] groups =
            [
                .. PanelClasses.Of(Pattern, Request.Layout.Rules.OneWay).Select(one => (
                    Pattern.Panels[one.Min()].Placed.Part, one.Sum(panel => Strikes.Count - lost[panel]))),
            ];
            return
            [
                .. Enumerable.Range(0, Request.Layout.Parts.Count).Select(part => new PartYield
                {
                    Part = part,
                    GoodPanels = groups.Where(g => g.Part == part).Sum(g => g.Good),
                    Balls = groups.Where(g => g.Part == part).Sum(g => g.Good / 2),
                }),
            ];
        }
    }
}
