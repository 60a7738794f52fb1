namespace FeltNest.Rolls.Plan.Chain;

/// <summary>Which panels of a strike are lost at every place of the grid, and why.</summary>
internal sealed class LossMap
{
    // A panel this little outside the usable width or the roll's end is inside, mm: rounding of a layout's own digits.
    private const double Slack = 1e-6;

    private readonly RollRequest request;
    private readonly StrikePattern pattern;
    private readonly StrikeGrid grid;
    private readonly List<(int From, int To, LossCause Cause)>[] lost;
    private readonly int[] good;

    internal LossMap(RollRequest request, StrikePattern pattern, StrikeGrid grid)
    {
        (this.request, this.pattern, this.grid) = (request, pattern, grid);
        lost = new List<(int, int, LossCause)>[pattern.Panels.Count * grid.Shifts];
        good = new int[grid.Places * grid.Shifts];
        int[] change = new int[grid.Places + 1];
        for (int shift = 0; shift < grid.Shifts; shift++)
        {
            Array.Clear(change);
            for (int panel = 0; panel < pattern.Panels.Count; panel++)
            {
                List<(int From, int To, LossCause Cause)> ranges = Ranges(pattern.Panels[panel], grid.ShiftMm(shift));
                lost[(panel * grid.Shifts) + shift] = ranges;
                Count(ranges, change);
            }

            int running = pattern.Panels.Count;
            for (int k = 0; k < grid.Places; k++)
            {
                running -= change[k];
                good[(k * grid.Shifts) + shift] = running;
            }
        }

        Bar();
    }

    /// <summary>Good panels of a strike at place k, shift s.</summary>
    internal int Good(int k, int s) => good[(k * grid.Shifts) + s];

    /// <summary>Lost panels of a strike at place k, shift s.</summary>
    internal IReadOnlyList<LostPanel> Lost(int k, int s) =>
    [
        .. from panel in Enumerable.Range(0, pattern.Panels.Count)
           let causes = lost[(panel * grid.Shifts) + s].Where(r => r.From <= k && k <= r.To)
           where causes.Any()
           select new LostPanel(panel, causes.Min(r => r.Cause)),
    ];

    // A place where no strike is made gives no good panel, so that no plan has a strike there.
    private void Bar()
    {
        if (!request.PastEnd)
        {
            (int first, _) = Places(request.Roll.LengthMm - pattern.LengthMm + Slack, double.PositiveInfinity);
            Bar(first, grid.Places - 1);
        }

        foreach (RollSplice splice in request.Roll.Splices.Where(s => s.ClearMm > 0))
        {
            (int first, int last) = Places(splice.FromMm - pattern.LengthMm, splice.ToMm);
            Bar(first, last);
        }
    }

    private void Bar(int first, int last) => Array.Clear(good, first * grid.Shifts, Math.Max(0, last - first + 1) * grid.Shifts);

    // A panel lost for two causes is lost once.
    private static void Count(IEnumerable<(int From, int To, LossCause Cause)> ranges, int[] change)
    {
        int done = -1;
        foreach ((int from, int to, _) in ranges.OrderBy(r => r.From))
        {
            int first = Math.Max(from, done + 1);
            if (to >= first)
            {
                change[first]++;
                change[to + 1]--;
                done = to;
            }
        }
    }

    private List<(int From, int To, LossCause Cause)> Ranges(StrikePanel panel, double shift)
    {
        List<(int From, int To, LossCause Cause)> ranges = [];
        FeltRoll roll = request.Roll;
        double low = panel.MinY + shift;
        double high = panel.MaxY + shift;
        Add(roll.LengthMm - panel.MaxX + Slack, double.PositiveInfinity, LossCause.RollEnd);
        foreach (RollSplice splice in roll.Splices)
        {
            Add(splice.XMm - panel.MaxX, splice.XMm - panel.MinX, LossCause.Joint);
        }

        if (IsOffCloth(low, high))
        {
            Add(double.NegativeInfinity, double.PositiveInfinity, LossCause.Width);
        }

        foreach (XRange narrow in Narrow(roll, high + request.Layout.Trims.UpperMm - Slack))
        {
            Add(narrow.From - panel.MaxX, narrow.To - panel.MinX, LossCause.Width);
        }

        IEnumerable<RollFault> faults = roll.Faults.Where(f => f.YMm <= high && f.YMm + f.WidthMm >= low);
        foreach (XRange met in faults.SelectMany(fault => OnFault(panel, fault, shift)))
        {
            Add(met.From, met.To, LossCause.Fault);
        }

        return ranges;

        void Add(double from, double to, LossCause cause)
        {
            (int first, int last) = Places(from, to);
            if (first <= last)
            {
                ranges.Add((first, last, cause));
            }
        }
    }

    // Over the lower trim or on a forbidden stripe.
    private bool IsOffCloth(double low, double high) =>
        low < request.Layout.Trims.LowerMm - Slack
            || request.Layout.Rules.Forbidden.Any(stripe => low < stripe.YToMm - Slack && high > stripe.YFromMm + Slack);

    private (int First, int Last) Places(double from, double to) => (
        (int)Math.Ceiling(Math.Clamp(((from - grid.FromMm) / grid.StepMm) - 1e-9, 0, grid.Places)),
        (int)Math.Floor(Math.Clamp(((to - grid.FromMm) / grid.StepMm) + 1e-9, -1, grid.Places - 1)));

    // Places of the strike at which the panel lies on the fault.
    private static IEnumerable<XRange> OnFault(StrikePanel panel, RollFault fault, double shift)
    {
        // The panel stays and the fault moves: their x along the roll differ by the strike's place.
        List<XRange> met = fault.RadiusMm is { } radius
            ? LevelLine.Near([panel.Corners], fault.MiddleY - shift, radius)
            : LevelLine.Across(panel.Corners, fault.YMm - shift, fault.YMm + fault.WidthMm - shift);
        (double first, double last) = fault.RadiusMm is null ? (fault.XMm, fault.XMm + fault.LengthMm) : (fault.MiddleX, fault.MiddleX);
        return met.Select(at => new XRange { From = first - at.To, To = last - at.From });
    }

    /// <summary>Where a roll is narrower than asked.</summary>
    internal static IEnumerable<XRange> Narrow(FeltRoll roll, double width)
    {
        WidthReading[] readings =
            [
                new() { XMm = double.NegativeInfinity, WidthMm = roll.Widths[0].WidthMm }, .. roll.Widths,
                new() { XMm = double.PositiveInfinity, WidthMm = roll.Widths[^1].WidthMm },
            ];
        for (int i = 1; i < readings.Length; i++)
        {
            (WidthReading a, WidthReading b) = (readings[i - 1], readings[i]);
            if (a.WidthMm >= width && b.WidthMm >= width)
            {
                continue;
            }

            double crossing = a.XMm + ((b.XMm - a.XMm) * ((width - a.WidthMm) / (b.WidthMm - a.WidthMm)));
            yield return new XRange
            {
                From = a.WidthMm < width ? a.XMm : crossing,
                To = b.WidthMm < width ? b.XMm : crossing,
            };
        }
    }
}
