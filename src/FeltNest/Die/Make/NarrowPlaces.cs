using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Die.Order;
using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Finds where the rule of one cavity stands nearer to itself than bodies and ejection have room.</summary>
/// <remarks>The edge is looked at in steps. From each step the nearest place of every other piece that faces it squarely is measured
/// exactly, so a step errs by less than a thousandth of a millimetre at a neck of 2 mm radius.</remarks>
internal sealed class NarrowPlaces
{
    // Steps along the edge, mm.
    private const double Step = 0.25;

    private readonly EdgeWalk walk;
    private readonly DieWork work;

    private NarrowPlaces(DieEdge edge, DieWork work) => (walk, this.work) = (new EdgeWalk(edge.Pieces), work);

    /// <summary>The places of all parts, necks first in each.</summary>
    public static IReadOnlyList<NarrowPlace> Of(IReadOnlyList<DieEdge?> edges, DieOrder order, DieWork work)
    {
        List<NarrowPlace> found = [];
        foreach ((DieEdge edge, int part) in edges.Select((e, i) => (e!, i)).Where(e => e.Item1 is not null))
        {
            NarrowPlaces finder = new(edge, work);
            found.AddRange(finder.Side(part, true, order.Rule.LeastNeckMm(order.Ejection.RoomMm)));
            found.AddRange(finder.Side(part, false, order.Rule.LeastGapMm(order.Ejection.RoomMm)));
        }

        return found;
    }

    // Long because it goes once round the edge, stretch by stretch.
    // Stretches narrower than so much on one side, each told once and not again from its other edge.
    private List<NarrowPlace> Side(int part, bool inPanel, double within)
    {
        (double Along, double Wide, double Step, Facing At)[] looks =
        [
            .. Enumerable.Range(0, walk.Pieces.Count).SelectMany(i => Looks(i, inPanel, within)),
        ];
        int start = Array.FindIndex(looks, l => l.Wide >= within);
        List<(double From, double To)> told = [];
        List<NarrowPlace> places = [];
        for (int k = 0; k < looks.Length;)
        {
            int length = 0;
            (double Along, double Wide, double Step, Facing At) At(int n) => looks[(start + 1 + n) % looks.Length];
            while (k + length < looks.Length && At(k + length).Wide < within)
            {
                length++;
            }

            if (length > 0)
            {
                (double Along, double Wide, double Step, Facing At) least = Enumerable.Range(k, length).Select(At).MinBy(l => l.Wide);
                if (!told.Any(t => Holds(t, least.At.Along)))
                {
                    places.Add(new NarrowPlace
                    {
                        Part = part,
                        InPanel = inPanel,
                        WidthMm = least.Wide,
                        Place = least.At.Middle,
                        LengthMm = Enumerable.Range(k, length).Sum(n => At(n).Step),
                    });
                }

                told.Add((At(k).Along - Step, At(k + length - 1).Along + Step));
            }

            k += length + 1;
        }

        return places;
    }

    private static bool Holds((double From, double To) stretch, double along) => stretch.From <= stretch.To
        ? along >= stretch.From && along <= stretch.To
        : along >= stretch.From || along <= stretch.To;

    private IEnumerable<(double Along, double Wide, double Step, Facing At)> Looks(int piece, bool inPanel, double within)
    {
        EdgePiece on = walk.Pieces[piece];
        int count = (int)Math.Ceiling(on.LengthMm / Step);
        for (int k = 0; k < count; k++)
        {
            double share = (double)k / count;
            Spot spot = Spot.Of(walk, piece, share);
            Facing least = new(double.PositiveInfinity, default, 0);
            work.Look();
            for (int i = 0; i < walk.Pieces.Count; i++)
            {
                EdgePiece other = walk.Pieces[i];
                if ((other.Middle - spot.At).Length - (other.LengthMm / 2) < Math.Min(within, least.WideMm))
                {
                    Spot across = Spot.Of(walk, i, other.ShareAt(spot.At));
                    double wide = (across.At - spot.At).Length;
                    if (wide < least.WideMm && Face(spot, across, wide, inPanel))
                    {
                        least = new Facing(wide, (spot.At + across.At) * 0.5, across.Along);
                    }
                }
            }

            yield return (spot.Along, least.WideMm, on.LengthMm / count, least);
        }
    }

    // Whether two places are two rules that look at each other over the panel, or over the waste.
    private bool Face(Spot one, Spot other, double wide, bool inPanel)
    {
        double way = Math.Abs(one.Along - other.Along);
        if (wide < 1e-9 || Math.Min(way, walk.Length - way) <= NarrowPlace.AnotherRule * wide)
        {
            return false;
        }

        Point2 across = (other.At - one.At) * (1 / wide);
        return one.Looks(across, inPanel) && other.Looks(-across, inPanel);
    }

    // Width across, the middle of it, and how far along the edge its other end stands.
    private readonly record struct Facing(double WideMm, Point2 Middle, double Along);

    // A place of the edge with the directions in which the edge comes and goes on.
    private readonly record struct Spot
    {
        public required Point2 At { get; init; }

        public required double Along { get; init; }

        public required Point2 Comes { get; init; }

        public required Point2 Goes { get; init; }

        public static Spot Of(EdgeWalk walk, int piece, double share)
        {
            IReadOnlyList<EdgePiece> all = walk.Pieces;
            Point2 here = all[piece].Direction(share);
            Point2 comes = share <= 0 ? all[(piece + all.Count - 1) % all.Count].Direction(1) : here;
            Point2 goes = share >= 1 ? all[(piece + 1) % all.Count].Direction(0) : here;
            return new Spot { At = all[piece].At(share), Along = walk.Along(piece, share), Comes = comes, Goes = goes };
        }

        public bool Looks(Point2 across, bool inPanel) =>
            across.Dot(Goes) <= NarrowPlace.MostLean
            && across.Dot(Comes) >= -NarrowPlace.MostLean
            && across.Dot(Comes.Left + Goes.Left) > 0 == inPanel;
    }
}
