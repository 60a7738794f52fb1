using FeltNest.Geometry;

namespace FeltNest.Layout.Limits;

/// <summary>Divides a repeat into equal strikes of one die.</summary>
internal static class StrikeDivision
{
    // Places this near are one place, mm and degrees: far above rounding, a thousandth of what the check allows.
    private const double Same = 1e-7;

    /// <summary>How often a repeat is written over so that it is at least as long as asked.</summary>
    internal static int Times(LayoutRepeat repeat, double leastMm) => Math.Max(1, (int)Math.Ceiling((leastMm / repeat.LengthMm) - 1e-12));

    /// <summary>The repeat written <paramref name="times"/> times over, its panels in the order of the strikes and its die stated: the
    /// fewest strikes that keep the limit. Null when no division keeps it. A die holds whole rows of the longer repeat.</summary>
    internal static LayoutRepeat? Divided(LayoutRepeat repeat, int times, IReadOnlyList<LayoutPart> parts, DieLimit limit)
    {
        foreach ((IReadOnlyList<PlacedPanel> share, IReadOnlyList<Point2> places) in Shares(repeat)
            .Where(s => s.Share.Count * times <= (limit.MostPanels ?? int.MaxValue)))
        {
            PlacedPanel[] die = Written(share, times, repeat.LengthMm);
            (double length, double width) = Extent(die, parts, times * repeat.LengthMm);
            if (limit.Holds(length, width))
            {
                return new LayoutRepeat(
                    times * repeat.LengthMm,
                    [.. from place in places from p in die select p with { XMm = p.XMm + place.X, YMm = p.YMm + place.Y }])
                {
                    Strike = new StrikeBlock { Panels = die.Length, Places = places, LengthMm = length, WidthMm = width },
                };
            }
        }

        return null;
    }

    /// <summary>Every equal share of a repeat whose moved copies are all of it, the whole first, with the places it goes to.</summary>
    internal static IEnumerable<(IReadOnlyList<PlacedPanel> Share, IReadOnlyList<Point2> Places)> Shares(LayoutRepeat repeat)
    {
        PlacedPanel[] panels = [.. repeat.Panels.OrderBy(p => p.YMm).ThenBy(p => p.XMm)];
        for (int across = 1; across <= panels.Length; across++)
        {
            if (panels.Length % across == 0 && Places(panels, panels.Length / across, repeat.LengthMm) is { } places)
            {
                yield return (panels[..(panels.Length / across)], places);
            }
        }
    }

    /// <summary>A share written over so many repeats.</summary>
    internal static PlacedPanel[] Written(IReadOnlyList<PlacedPanel> share, int times, double repeatMm) =>
        [.. from panel in share from k in Enumerable.Range(0, times) select panel with { XMm = panel.XMm + (k * repeatMm) }];

    // Where the die goes so that every group of panels, taken in order across the roll, is its moved copy; null where one is not.
    private static List<Point2>? Places(PlacedPanel[] panels, int cavities, double repeat)
    {
        List<Point2> places = [];
        for (int i = 0; i < panels.Length; i++)
        {
            PlacedPanel die = panels[i % cavities];
            PlacedPanel panel = panels[i];
            if (i % cavities == 0)
            {
                places.Add(new Point2(panel.XMm - die.XMm, panel.YMm - die.YMm));
            }

            bool moved = die.Part == panel.Part && Math.Abs(Math.IEEERemainder(panel.AngleDeg - die.AngleDeg, 360)) < Same
                && Math.Abs(Math.IEEERemainder(panel.XMm - die.XMm - places[^1].X, repeat)) < Same
                && Math.Abs(panel.YMm - die.YMm - places[^1].Y) < Same;
            if (!moved)
            {
                return null;
            }
        }

        return places;
    }

    // The copies along the roll are chosen so that the die is as short as it can be.
    private static (double Length, double Width) Extent(ReadOnlySpan<PlacedPanel> cavities, IReadOnlyList<LayoutPart> parts, double repeat)
    {
        Outline[] turned = new Outline[cavities.Length];
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        double shortest = double.PositiveInfinity;
        for (int i = 0; i < cavities.Length; i++)
        {
            turned[i] = parts[cavities[i].Part].Outline.Turned(double.DegreesToRadians(cavities[i].AngleDeg));
            (low, high) = (Math.Min(low, cavities[i].YMm + turned[i].MinY), Math.Max(high, cavities[i].YMm + turned[i].MaxY));
        }

        foreach (PlacedPanel from in cavities)
        {
            double left = double.PositiveInfinity;
            double right = double.NegativeInfinity;
            for (int i = 0; i < cavities.Length; i++)
            {
                double x = cavities[i].XMm - from.XMm;
                x -= Math.Floor((x / repeat) + 1e-9) * repeat;
                (left, right) = (Math.Min(left, x + turned[i].MinX), Math.Max(right, x + turned[i].MaxX));
            }

            shortest = Math.Min(shortest, right - left);
        }

        return (shortest, high - low);
    }
}
