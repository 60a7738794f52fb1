using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using static FeltNest.InvariantText;

namespace FeltNest.Layout.Check;

/// <summary>Holds a layout to the rules on cloth and dies: forbidden stripes, bands, least repeat, and the die that cuts the repeat. Shares
/// no code with the search.</summary>
internal static class ShopCheck
{
    private const double Slack = 1e-4;

    /// <summary>One clear line for each rule broken.</summary>
    internal static IEnumerable<string> Violations(RollLayout layout)
    {
        if (layout.Bands.Count > Math.Max(1, layout.Rules.Bands))
        {
            yield return Invariant($"{layout.Bands.Count} bands have a repeat of their own, {layout.Rules.Bands} allowed");
        }

        foreach (LayoutBand band in layout.Bands)
        {
            if (band.Repeat.LengthMm < layout.Rules.LeastRepeatMm - Slack)
            {
                yield return Invariant(
                    $"repeat {band.Repeat.LengthMm:0.####} mm is shorter than the least, {layout.Rules.LeastRepeatMm:0.####}");
            }

            foreach (string line in InStripes(layout, band).Concat(Strikes(layout, band.Repeat)))
            {
                yield return line;
            }
        }
    }

    private static IEnumerable<string> InStripes(RollLayout layout, LayoutBand band)
    {
        for (int i = 0; i < band.Repeat.Panels.Count; i++)
        {
            (_, _, double low, double high) = Extent(layout, band.Repeat.Panels[i]);
            foreach (ForbiddenStrip strip in layout.Rules.Forbidden)
            {
                if (high > strip.YFromMm + Slack && low < strip.YToMm - Slack)
                {
                    yield return Invariant(
                        $"panel {i + 1}: reaches from {low:0.####} to {high:0.####} mm across, into the forbidden stripe "
                            + $"{strip.YFromMm:0.####} to {strip.YToMm:0.####}");
                }
            }
        }
    }

    // The first panels of the list are the die; every later one must be the die's panel of the same number, moved to the place of its
    // strike.
    private static IEnumerable<string> Strikes(RollLayout layout, LayoutRepeat repeat)
    {
        StrikeBlock die = repeat.Strike ?? new StrikeBlock { Panels = repeat.Panels.Count, Places = [default], LengthMm = 0, WidthMm = 0 };
        if (die.Panels * die.Places.Count != repeat.Panels.Count)
        {
            yield return Invariant(
                $"a die of {die.Panels} panels struck {die.Places.Count} times does not make a repeat of {repeat.Panels.Count}");
            yield break;
        }

        for (int i = die.Panels; i < repeat.Panels.Count; i++)
        {
            PlacedPanel from = repeat.Panels[i % die.Panels];
            PlacedPanel to = repeat.Panels[i];
            int strike = i / die.Panels;
            double x = to.XMm - from.XMm - die.Places[strike].X;
            x -= Math.Round(x / repeat.LengthMm) * repeat.LengthMm;
            double y = to.YMm - from.YMm - die.Places[strike].Y;
            double turn = Math.IEEERemainder(to.AngleDeg - from.AngleDeg, 360);
            if (from.Part != to.Part || Math.Abs(x) > Slack || Math.Abs(y) > Slack || Math.Abs(turn) > 1e-5)
            {
                yield return Invariant(
                    $"panel {i + 1} is not cut by strike {strike + 1} of the die: off by {x:0.####} mm along, {y:0.####} mm across, "
                        + $"{turn:0.####} degrees");
            }
        }

        foreach (string line in layout.Rules.Die is { } limit ? Limit(layout, repeat, die, limit) : [])
        {
            yield return line;
        }
    }

    private static IEnumerable<string> Limit(RollLayout layout, LayoutRepeat repeat, StrikeBlock die, DieLimit limit)
    {
        if (die.Panels > (limit.MostPanels ?? int.MaxValue))
        {
            yield return Invariant($"the die holds {die.Panels} panels, at most {limit.MostPanels} allowed");
        }

        (double length, double width) = Room(layout, repeat, die.Panels);
        if (length > (limit.BedLengthMm ?? double.PositiveInfinity) + Slack
            || width > (limit.BedWidthMm ?? double.PositiveInfinity) + Slack)
        {
            yield return Invariant(
                $"the die needs {length:0.####} x {width:0.####} mm, the bed has {limit.BedLengthMm ?? double.PositiveInfinity:0.####} "
                    + $"x {limit.BedWidthMm ?? double.PositiveInfinity:0.####}");
        }
    }

    // Copies one repeat on are as good: the shortest die over all places where the circle of the repeat may be cut open.
    private static (double Length, double Width) Room(RollLayout layout, LayoutRepeat repeat, int cavities)
    {
        var boxes = repeat.Panels.Take(cavities).Select(p => (Panel: p, Box: Extent(layout, p))).ToList();
        double shortest = boxes.Min(start => boxes.Max(b => End(start.Panel, b)) - boxes.Min(b => Begin(start.Panel, b)));
        return (shortest, boxes.Max(b => b.Box.High) - boxes.Min(b => b.Box.Low));

        double Ahead(PlacedPanel start, PlacedPanel p) =>
            p.XMm - start.XMm - (Math.Floor((p.XMm - start.XMm + 1e-7) / repeat.LengthMm) * repeat.LengthMm);
        double Begin(PlacedPanel start, (PlacedPanel Panel, (double Left, double Right, double Low, double High) Box) b) =>
            Ahead(start, b.Panel) + b.Box.Left - b.Panel.XMm;
        double End(PlacedPanel start, (PlacedPanel Panel, (double Left, double Right, double Low, double High) Box) b) =>
            Ahead(start, b.Panel) + b.Box.Right - b.Panel.XMm;
    }

    private static (double Left, double Right, double Low, double High) Extent(RollLayout layout, PlacedPanel panel)
    {
        double angle = panel.AngleDeg * Math.PI / 180;
        double cos = Math.Cos(angle);
        double sin = Math.Sin(angle);
        IReadOnlyList<Point2> points = layout.Parts[panel.Part].Outline.Points;
        return (
            panel.XMm + points.Min(p => (p.X * cos) - (p.Y * sin)), panel.XMm + points.Max(p => (p.X * cos) - (p.Y * sin)),
            panel.YMm + points.Min(p => (p.X * sin) + (p.Y * cos)), panel.YMm + points.Max(p => (p.X * sin) + (p.Y * cos)));
    }
}
