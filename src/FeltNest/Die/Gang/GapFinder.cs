using FeltNest.Die.Effort;
using FeltNest.Die.Order;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Die.Gang;

/// <summary>Gaps within a die and between its strikes.</summary>
internal static class GapFinder
{
    /// <summary>Least gap between two cavities of the die, mm (infinite for one cavity), and where.</summary>
    internal static (double GapMm, Point2 Place) Within(IReadOnlyList<LayoutPart> parts, DieGang gang, double expectedMm, DieWork work)
    {
        Rings rings = new(parts, gang, work);
        (double Gap, Point2 Place) least = (double.PositiveInfinity, default);
        for (int i = 0; i < rings.Count; i++)
        {
            foreach (int k in rings.Near(rings[i], Worthwhile(least.Gap, expectedMm), default).Where(k => k > i))
            {
                least = Nearer(least, rings[i], rings[k], default, expectedMm);
            }
        }

        return least;
    }

    // Long because it keeps four least gaps through one walk over all pairs.
    /// <summary>What stays between strikes: each strike is compared with those of the next feeds and of other places, and with the bands
    /// beside.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="gang">The die.</param>
    /// <param name="feedMm">Tolerance of one feed, mm.</param>
    /// <param name="guideMm">Tolerance of the guide, mm: two strikes may err against each other by twice that.</param>
    /// <param name="tolerances">Each edge may stand half of its profile outside, and each cavity half of its position off its
    /// place.</param>
    /// <param name="work">Counts what is looked at.</param>
    internal static StrikeJoint Between(
        RollLayout layout, DieGang gang, double feedMm, double guideMm, DieTolerances tolerances, DieWork work)
    {
        double position = gang.Cavities.Count > 1 ? tolerances.PositionMm : 0;
        Rings rings = new(layout.Parts, gang, work);
        (double Gap, Point2 Place) nominal = (double.PositiveInfinity, default);
        ((double Gap, Point2 Place) worst, (double Gap, Point2 Place) across, (double Gap, Point2 Place) acrossWorst) =
            (nominal, nominal, nominal);
        foreach ((Point2 move, int feeds, bool beside) in Moves(gang, work))
        {
            Point2 play = new(feedMm * Math.Max(1, feeds), 2 * guideMm);
            for (int k = 0; k < rings.Count; k++)
            {
                Ring moved = rings[k].Moved(move);
                double reach = Math.Max(Wide(nominal, across, beside), Wide(worst, acrossWorst, beside));
                foreach (Ring ring in rings.Near(moved, reach, play).Select(i => rings[i]))
                {
                    nominal = Nearer(nominal, ring, moved, default, nominal.Gap);
                    worst = Nearer(worst, ring, moved, play, worst.Gap);
                    if (beside)
                    {
                        across = Nearer(across, ring, moved, default, across.Gap);
                        acrossWorst = Nearer(acrossWorst, ring, moved, play, acrossWorst.Gap);
                    }
                }
            }
        }

        return new StrikeJoint
        {
            NominalMm = nominal.Gap,
            WorstMm = worst.Gap - tolerances.EdgeProfileMm - position,
            FeedToleranceMm = feedMm,
            GuideToleranceMm = guideMm,
            EdgeProfileMm = tolerances.EdgeProfileMm,
            PositionMm = position,
            Place = worst.Place,
            AcrossMm = across.Gap,
            AcrossWorstMm = acrossWorst.Gap - tolerances.EdgeProfileMm - position,
            BandMm = ToBands(layout, gang.Band),
        };
    }

    // Moves from one strike to another that comes beside it, with the feeds between them; the same die moved there or back is the same
    // pair.
    private static IEnumerable<(Point2 Move, int Feeds, bool Beside)> Moves(DieGang gang, DieWork work)
    {
        const double beyond = 20;
        PlaceGrid<int> across = new(gang.EdgeWidthMm + beyond);
        for (int i = 0; i < gang.Places.Count; i++)
        {
            across.Add(new Point2(0, gang.Places[i].Y), i);
        }

        HashSet<(double, double, bool)> done = [];
        for (int i = 0; i < gang.Places.Count; i++)
        {
            Point2 a = gang.Places[i];
            foreach (int other in across.Near(new Point2(0, a.Y), gang.EdgeWidthMm + beyond).Order())
            {
                Point2 way = gang.Places[other] - a;
                int first = (int)Math.Floor(-way.X / gang.FeedMm) - 1;
                int last = (int)Math.Ceiling((gang.EdgeLengthMm + beyond - way.X) / gang.FeedMm);
                for (int k = first; k <= last; k++)
                {
                    work.Look();
                    Point2 move = way + new Point2(k * gang.FeedMm, 0);
                    bool apart = move.X < -1e-6
                        || (move.X < 1e-6 && move.Y < 0)
                        || move.X > gang.EdgeLengthMm + beyond
                        || Math.Abs(move.Y) > gang.EdgeWidthMm + beyond;
                    if (move.Length >= 1e-6 && !apart && done.Add((Math.Round(move.X, 4), Math.Round(move.Y, 4), i == other)))
                    {
                        yield return (move, Math.Abs(k), i != other);
                    }
                }
            }
        }
    }

    // Bands have repeats of their own, so any of their panels may come beside any other: what counts is how far they reach across.
    private static double ToBands(RollLayout layout, int own)
    {
        (double Low, double High)[] reach = [.. layout.Bands.Select(band =>
        {
            (double Low, double High)[] panels =
            [
                .. band.Repeat.Panels.Select(p =>
                    layout.Parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg)) is var turned
                        ? (p.YMm + turned.MinY, p.YMm + turned.MaxY)
                        : default),
            ];
            return (panels.Min(p => p.Low), panels.Max(p => p.High));
        })];
        return Enumerable.Range(0, reach.Length)
            .Where(i => i != own)
            .Select(i => Math.Max(reach[i].Low - reach[own].High, reach[own].Low - reach[i].High))
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
    }

    private static double Wide((double Gap, Point2 Place) any, (double Gap, Point2 Place) side, bool beside) =>
        beside ? Math.Max(Worthwhile(any.Gap, any.Gap), Worthwhile(side.Gap, side.Gap)) : Worthwhile(any.Gap, any.Gap);

    // Pairs further apart than ten times what is expected need not be measured before a nearer one is known.
    private static double Worthwhile(double leastMm, double hintMm)
    {
        if (!double.IsInfinity(leastMm))
        {
            return leastMm;
        }

        return double.IsInfinity(hintMm) ? 1000 : Math.Max(50, 10 * hintMm);
    }

    private static (double Gap, Point2 Place) Nearer((double Gap, Point2 Place) least, Ring a, Ring b, Point2 play, double hint)
    {
        double worthwhile = Worthwhile(least.Gap, hint);
        if (a.LeastAway(b, play) >= worthwhile)
        {
            return least;
        }

        (double gap, Point2 place) = EdgeDistance.Least(a.Corners, b.Corners, play, worthwhile);
        return gap < least.Gap ? (gap, place) : least;
    }

    // Outlines of all cavities, found by where they stand.
    private sealed class Rings
    {
        private readonly Ring[] rings;
        private readonly Point2 largest;
        private readonly PlaceGrid<int> byLow;
        private readonly DieWork work;

        public Rings(IReadOnlyList<LayoutPart> parts, DieGang gang, DieWork work)
        {
            this.work = work;
            rings = [.. gang.Cavities.Select(c =>
            {
                work.Look();
                (double sin, double cos) = Math.SinCos(double.DegreesToRadians(c.Placed.AngleDeg));
                return Ring.Of([
                    .. parts[c.Placed.Part].Outline.Points.Select(p =>
                        new Point2((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos)) + new Point2(c.Placed.XMm, c.Placed.YMm)),
                ]);
            })];
            largest = new(rings.Max(r => r.High.X - r.Low.X), rings.Max(r => r.High.Y - r.Low.Y));
            byLow = new PlaceGrid<int>(Math.Max(largest.X, largest.Y));
            for (int i = 0; i < rings.Length; i++)
            {
                byLow.Add(rings[i].Low, i);
            }
        }

        public int Count => rings.Length;

        public Ring this[int at] => rings[at];

        /// <summary>All that may stand nearer than so much to one, in their order.</summary>
        public int[] Near(Ring ring, double reach, Point2 play)
        {
            Point2 away = new(reach + play.X, reach + play.Y);
            int[] near = [.. byLow.Within(ring.Low - away - largest, ring.High + away).Order()];
            work.Look(near.Length);
            return near;
        }
    }

    // Corners with their extent, which tells most pairs apart.
    private sealed record Ring
    {
        public required Point2[] Corners { get; init; }

        public required Point2 Low { get; init; }

        public required Point2 High { get; init; }

        public static Ring Of(Point2[] corners) =>
            new()
            {
                Corners = corners,
                Low = new(corners.Min(p => p.X), corners.Min(p => p.Y)),
                High = new(corners.Max(p => p.X), corners.Max(p => p.Y)),
            };

        public Ring Moved(Point2 by) => new() { Corners = Array.ConvertAll(Corners, p => p + by), Low = Low + by, High = High + by };

        public double LeastAway(Ring other, Point2 play) => Math.Max(
            Math.Max(other.Low.X - High.X, Low.X - other.High.X) - play.X, Math.Max(other.Low.Y - High.Y, Low.Y - other.High.Y) - play.Y);
    }
}
