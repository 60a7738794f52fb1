using static FeltNest.InvariantText;

namespace FeltNest.Layout.Check;

/// <summary>Verifies the rules on the angles of panels. They bind the first part; a further one is laid at its own design angle. Each
/// part's panels keep the rules among themselves.</summary>
internal static class AngleCheck
{
    private const double AngleSlackDeg = 1e-6;

    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Violations(RollLayout layout)
    {
        foreach (IGrouping<int, PlacedPanel> part in layout.Bands.SelectMany(b => b.Repeat.Panels).GroupBy(p => p.Part))
        {
            double? warp = part.Key == 0 ? layout.Rules.WarpAngleDeg : layout.Parts[part.Key].WarpAngleDeg;
            foreach (PlacedPanel panel in part.Where(_ => warp is not null))
            {
                double off = Math.Abs(Math.IEEERemainder(panel.AngleDeg - warp!.Value, 180));
                if (off > layout.Rules.WarpToleranceDeg + AngleSlackDeg)
                {
                    yield return Invariant(
                        $"a panel lies at {panel.AngleDeg:0.######} degrees: {off:0.######} off the warp angle {warp:0.######}, "
                            + $"tolerance {layout.Rules.WarpToleranceDeg:0.######}");
                }
            }

            if (Rows(layout.Rules.Rows, [.. part]) is { } line)
            {
                yield return line;
            }
        }

        PlacedPanel[] all = [.. layout.Bands.SelectMany(b => b.Repeat.Panels)];
        if (layout.Rules.OneWay && all.Length > 0)
        {
            double first = all[0].AngleDeg;
            double[] off = [.. all.Select(p => Math.IEEERemainder(p.AngleDeg - first, 360))];

            // Half a turn apart is as far as directions get: two such panels lie head to tail.
            if (off.Max() - off.Min() > 180 - AngleSlackDeg)
            {
                yield return "one way: panels do not lie within 90 degrees of one direction";
            }
        }
    }

    private static string? Rows(RowRule rule, PlacedPanel[] panels)
    {
        double[] tilts = [.. panels.Select(p => p.AngleDeg - (Math.Floor(p.AngleDeg / 180) * 180))];
        bool Parallel(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 180)) <= AngleSlackDeg;
        if (tilts.Length == 0 || rule == RowRule.Any)
        {
            return null;
        }

        if (rule == RowRule.Same)
        {
            return tilts.All(t => Parallel(t, tilts[0])) ? null : "rows same: panels are not parallel";
        }

        return tilts.All(t => Parallel(t, tilts[0]) || Parallel(t, -tilts[0]))
            ? null
            : "rows alternate: panels lie at other angles than +a and -a";
    }
}
