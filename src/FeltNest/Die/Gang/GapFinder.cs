using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Die.Gang;

/// <summary>Gaps within a die and between its strikes.</summary>
public static class GapFinder
{
    /// <summary>Least gap between two cavities of the die, mm (infinite for one cavity), and where.</summary>
    public static (double GapMm, Point2 Place) Within(IReadOnlyList<LayoutPart> parts, DieGang gang, double expectedMm)
    {
        Ring[] rings = Rings(parts, gang);
        (double Gap, Point2 Place) least = (double.PositiveInfinity, default);
        for (int i = 0; i < rings.Length; i++)
        {
            for (int k = i + 1; k < rings.Length; k++)
            {
                least = Nearer(least, rings[i], rings[k], default, expectedMm);
            }
        }

        return least;
    }

    /// <summary>What stays between strikes: each strike is compared with those of the next feeds and of other places, and with the bands beside.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="gang">The die.</param>
    /// <param name="feedMm">Tolerance of one feed, mm.</param>
    /// <param name="guideMm">Tolerance of the guide, mm: two strikes may err against each other by twice that.</param>
    /// <param name="edgeProfileMm">Profile tolerance of the edge, mm: each edge may stand half of it outside.</param>
    public static StrikeJoint Between(RollLayout layout, DieGang gang, double feedMm, double guideMm, double edgeProfileMm)
    {
        Ring[] rings = Rings(layout.Parts, gang);
        (double Gap, Point2 Place) none = (double.PositiveInfinity, default), nominal = none, worst = none, across = none, acrossWorst = none;
        int feeds = (int)Math.Ceiling((gang.EdgeLengthMm + gang.Places.Max(p => Math.Abs(p.X))) / gang.FeedMm) + 1;
        HashSet<(double, double, bool)> done = [];
        foreach ((Point2 a, Point2 b, int k) in gang.Places.SelectMany(a => gang.Places.SelectMany(b => Enumerable.Range(-feeds, (2 * feeds) + 1).Select(k => (a, b, k)))))
        {
            // The same die moved there or back is the same pair.
            Point2 move = b - a + new Point2(k * gang.FeedMm, 0);
            if (move.Length < 1e-6 || move.X < -1e-6 || (move.X < 1e-6 && move.Y < 0) || move.X > gang.EdgeLengthMm + 20 || Math.Abs(move.Y) > gang.EdgeWidthMm + 20
                || !done.Add((Math.Round(move.X, 4), Math.Round(move.Y, 4), a == b)))
            {
                continue;
            }

            Point2 play = new(feedMm * Math.Max(1, Math.Abs(k)), 2 * guideMm);
            foreach (Ring other in rings)
            {
                Ring moved = other.Moved(move);
                foreach (Ring ring in rings)
                {
                    nominal = Nearer(nominal, ring, moved, default, nominal.Gap);
                    worst = Nearer(worst, ring, moved, play, worst.Gap);
                    if (a != b)
                    {
                        across = Nearer(across, ring, moved, default, across.Gap);
                        acrossWorst = Nearer(acrossWorst, ring, moved, play, acrossWorst.Gap);
                    }
                }
            }
        }

        return new StrikeJoint(nominal.Gap, worst.Gap - edgeProfileMm, feedMm, guideMm, edgeProfileMm, worst.Place)
        {
            AcrossMm = across.Gap,
            AcrossWorstMm = acrossWorst.Gap - edgeProfileMm,
            BandMm = ToBands(layout, gang.Band),
        };
    }

    // Bands have repeats of their own, so any of their panels may come beside any other: what counts is how far they reach across.
    private static double ToBands(RollLayout layout, int own)
    {
        (double Low, double High)[] reach = [.. layout.Bands.Select(band =>
        {
            (double Low, double High)[] panels = [.. band.Repeat.Panels.Select(p => layout.Parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg)) is var turned ? (p.YMm + turned.MinY, p.YMm + turned.MaxY) : default)];
            return (panels.Min(p => p.Low), panels.Max(p => p.High));
        })];
        return Enumerable.Range(0, reach.Length).Where(i => i != own).Select(i => Math.Max(reach[i].Low - reach[own].High, reach[own].Low - reach[i].High)).DefaultIfEmpty(double.PositiveInfinity).Min();
    }

    private static (double Gap, Point2 Place) Nearer((double Gap, Point2 Place) least, Ring a, Ring b, Point2 play, double hint)
    {
        // Pairs further apart than ten times what is expected need not be measured before a nearer one is known.
        double worthwhile = double.IsInfinity(least.Gap) ? double.IsInfinity(hint) ? 1000 : Math.Max(50, 10 * hint) : least.Gap;
        if (a.LeastAway(b, play) >= worthwhile)
        {
            return least;
        }

        (double gap, Point2 place) = EdgeDistance.Least(a.Corners, b.Corners, play, worthwhile);
        return gap < least.Gap ? (gap, place) : least;
    }

    private static Ring[] Rings(IReadOnlyList<LayoutPart> parts, DieGang gang) => [.. gang.Cavities.Select(c =>
        Ring.Of([.. parts[c.Placed.Part].Outline.Turned(double.DegreesToRadians(c.Placed.AngleDeg)).Moved(new Point2(c.Placed.XMm, c.Placed.YMm)).Points]))];

    // Corners with their extent, which tells most pairs apart.
    private sealed record Ring(Point2[] Corners, Point2 Low, Point2 High)
    {
        public static Ring Of(Point2[] corners) => new(corners, new(corners.Min(p => p.X), corners.Min(p => p.Y)), new(corners.Max(p => p.X), corners.Max(p => p.Y)));

        public Ring Moved(Point2 by) => new(Array.ConvertAll(Corners, p => p + by), Low + by, High + by);

        public double LeastAway(Ring other, Point2 play) => Math.Max(
            Math.Max(other.Low.X - High.X, Low.X - other.High.X) - play.X, Math.Max(other.Low.Y - High.Y, Low.Y - other.High.Y) - play.Y);
    }
}
