using FeltNest.Geometry;
using FeltNest.Layout;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using NetTopologySuite.Operation.Distance;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Check;

/// <summary>Reads a board for the laser back against its die with NetTopologySuite; shares no code with the design.</summary>
/// <remarks>Of a band of length L and width w area and girth are L w and 2 (L + w): so its width is found whatever its bends. Slots must
/// lie beside the cutting edges, be as long as the rule less its bridges, and leave the board between them.</remarks>
internal sealed class BoardCutCheck
{
    private const double Chord = 5e-4;
    private const double Slack = 0.01;

    // Least board between a hole and a slot, and between a stroke and either: mm.
    private const double ClearMm = 2;
    private const double StrokeMm = 0.25;

    // Corners of the rule go on to their mitres, up to so much of a slot's width: share of it; and the length of all may be off by this
    // share.
    private const double Mitre = 12;
    private const double LengthShare = 5e-3;

    private static readonly GeometryFactory Factory = new();

    private readonly StatedDie die;
    private readonly StatedLaser laser;
    private readonly StatedBoardCut board;
    private readonly List<string> violations;
    private readonly Polygon[] slots;
    private readonly STRtree<int> tree = new();

    private BoardCutCheck(StatedDie die, StatedLaser laser, StatedBoardCut board, List<string> violations)
    {
        (this.die, this.laser, this.board, this.violations) = (die, laser, board, violations);
        slots = [.. board.Slots.Select(s => Ring(s))];
        for (int i = 0; i < slots.Length; i++)
        {
            tree.Insert(slots[i].EnvelopeInternal, i);
        }
    }

    /// <summary>Adds a line for whatever does not hold; a die whose file tells of no such board is one.</summary>
    public static void Run(StatedDie die, StatedBoardCut board, List<string> violations)
    {
        if (die.Laser is not { } laser)
        {
            violations.Add("board.laser: the die's file tells of no board for a laser");
            return;
        }

        BoardCutCheck check = new(die, laser, board, violations);
        check.Widths();
        check.Places();
        check.Between();
        check.Round();
        check.Extents();
    }

    private void Widths()
    {
        double wanted = laser.SlotMm - laser.KerfMm;
        double length = 0;
        foreach ((int i, Polygon slot) in slots.Index())
        {
            double girth = slot.ExteriorRing.Length;
            double width = (girth - Math.Sqrt(Math.Max(0, (girth * girth) - (16 * slot.Area)))) / 4;
            length += (girth / 2) - width + laser.KerfMm;
            if (!(Math.Abs(width - wanted) <= Slack))
            {
                violations.Add(Invariant(
                    $"slot {i + 1} near ({slot.Centroid.X:0.#}, {slot.Centroid.Y:0.#}): {width:0.###} mm wide, {wanted:0.###} is wanted"));
            }
        }

        // A slot runs out over a split by a millimetre on either side: less than the share allowed.
        if (die.Strips is { } strips && die.CommonCuts.Count == 0)
        {
            double rule = strips.Sum(s => s.Count * (s.MiddleMm - s.Notches.Sum(n => n.To - n.From)));
            if (!(Math.Abs(length - rule) <= LengthShare * rule))
            {
                violations.Add(Invariant($"slots: {length:0.#} mm in all, rule less bridges is {rule:0.#}"));
            }
        }
    }

    // Every corner of a slot lies beside a cutting edge, on the side of the rule's body.
    private void Places()
    {
        Dictionary<int, Coordinate[]> walked = die.Edges.ToDictionary(e => e.Key, e => DieEdgeCheck.Walk(e.Value.Vertices, Chord));
        Polygon[] cavities = [.. die.Cavities.Select(c => Placed(walked[c.Part], c))];
        STRtree<int> found = new();
        IndexedFacetDistance[] edges = [.. cavities.Select(c => new IndexedFacetDistance(c.ExteriorRing))];
        for (int i = 0; i < cavities.Length; i++)
        {
            found.Insert(cavities[i].EnvelopeInternal, i);
        }

        double half = (laser.SlotMm - laser.KerfMm) / 2;
        double most = Math.Abs(die.MiddleInWasteMm) + half + Slack;
        double far = (Mitre * laser.SlotMm) + 1;
        foreach ((int i, IReadOnlyList<ArcVertex> slot) in board.Slots.Index())
        {
            double worst = 0;
            int near = 0;
            foreach (ArcVertex v in slot)
            {
                Point2 at = laser.Together(v.Point);
                Envelope reach = new(new Coordinate(at.X, at.Y));
                reach.ExpandBy(far);
                Point place = Factory.CreatePoint(new Coordinate(at.X, at.Y));
                double off = found.Query(reach).Select(k => edges[k].Distance(place)).DefaultIfEmpty(double.PositiveInfinity).Min();
                worst = Math.Max(worst, off);
                near += off <= most ? 1 : 0;
            }

            // Mitred corners stand further off than the sides.
            if (worst > far || near < 2)
            {
                violations.Add(
                    Invariant($"slot {i + 1} near ({slot[0].X:0.#}, {slot[0].Y:0.#}): stands {worst:0.##} mm off every cutting edge"));
            }
        }
    }

    // No slot is nearer to another than the board stands: than gap, neck and slit of the die leave, and than a bridge.
    private void Between()
    {
        double body = die.Own is { } own ? Math.Max(own.BodyInWasteMm, 0) : 0;
        double stands = Math.Min(die.LeastGapMm - (2 * body), laser.BridgeMm);
        if (die.Own is { } rule)
        {
            foreach (Make.NarrowPlace narrow in rule.Narrow)
            {
                stands =
                    Math.Min(stands, narrow.WidthMm - (2 * (narrow.InPanel ? rule.ThicknessMm - rule.BodyInWasteMm : rule.BodyInWasteMm)));
            }

            // Slots may be wider or narrower than the rule, and the lines stand inside what is burnt away.
            stands += rule.ThicknessMm - laser.SlotMm + laser.KerfMm;
        }

        if (die.CommonCuts.Count > 0)
        {
            return;
        }

        for (int i = 0; i < slots.Length; i++)
        {
            Envelope near = slots[i].EnvelopeInternal.Copy();
            near.ExpandBy(Math.Max(0, stands));
            foreach (int k in tree.Query(near).Where(k => k > i))
            {
                double found = IndexedFacetDistance.Distance(slots[i].ExteriorRing, slots[k].ExteriorRing);
                if (found < stands - (2 * Slack) || slots[i].Contains(slots[k].InteriorPoint))
                {
                    violations.Add(Invariant(
                        $"slots {i + 1} and {k + 1} near ({slots[i].Centroid.X:0.#}, {slots[i].Centroid.Y:0.#}): {found:0.###} mm between "
                            + $"their lines, the board stands from {stands:0.###}"));
                }
            }
        }
    }

    // Holes clear of slots and of each other, strokes clear of both, all of it on the board.
    private void Round()
    {
        double k = laser.KerfMm / 2;
        foreach ((string layer, Point2 at, double radius) in board.Holes)
        {
            Point place = Factory.CreatePoint(new Coordinate(at.X, at.Y));
            double found = ToSlots(place, radius + k + ClearMm + 1) - radius - (2 * k);
            double other = board.Holes.Where(h => h.At != at).Select(h => (h.At - at).Length - h.RadiusMm - radius - (2 * k))
                .DefaultIfEmpty(double.PositiveInfinity).Min();
            if (Math.Min(found, other) < ClearMm - Slack - k)
            {
                violations.Add(Invariant(
                    $"{layer} at ({at.X:0.#}, {at.Y:0.#}): {Math.Min(found, other):0.##} mm from a slot or hole, {ClearMm:0.##} is "
                        + $"wanted"));
            }
        }

        Strokes();
        Pieces(k);
    }

    private void Strokes()
    {
        foreach (IReadOnlyList<ArcVertex> stroke in board.Strokes)
        {
            LineString line = Line(stroke);
            double found = Math.Min(
                ToSlots(line, StrokeMm + 1),
                board.Holes.Select(h => DistanceOp.Distance(line, Factory.CreatePoint(new Coordinate(h.At.X, h.At.Y))) - h.RadiusMm)
                    .DefaultIfEmpty(double.PositiveInfinity).Min());
            if (found < StrokeMm)
            {
                violations.Add(Invariant($"engraving near ({stroke[0].X:0.#}, {stroke[0].Y:0.#}): {found:0.##} mm from a slot or a hole"));
            }
        }

    }

    private void Pieces(double k)
    {
        if (board.Outlines.Count != laser.Splits.Count + 1)
        {
            violations.Add($"board: {board.Outlines.Count} pieces are drawn, {laser.Splits.Count} splits make {laser.Splits.Count + 1}");
        }

        double area = board.Outlines.Sum(o => Ring(o).Buffer(-k, new NetTopologySuite.Operation.Buffer.BufferParameters(
            1, NetTopologySuite.Operation.Buffer.EndCapStyle.Flat, NetTopologySuite.Operation.Buffer.JoinStyle.Mitre, 5)).Area);
        StatedNumber.Same(violations, "board: area of its pieces in mm2", area, die.BoardLengthMm * die.BoardWidthMm, 1);
        Polygon[] pieces = [.. board.Outlines.Select(o => (Polygon)Ring(o).Buffer(2))];
        if (slots.Any(s => !pieces.Any(p => p.Covers(s))))
        {
            violations.Add("board: a slot leaves the board");
        }
    }

    private void Extents()
    {
        Envelope all = new();
        foreach (Polygon ring in slots.Concat(board.Outlines.Select(o => Ring(o))))
        {
            all.ExpandToInclude(ring.EnvelopeInternal);
        }

        bool holds = board.Extents is { } e
            && e.Low.X <= all.MinX + Slack && e.Low.Y <= all.MinY + Slack && e.High.X >= all.MaxX - Slack && e.High.Y >= all.MaxY - Slack;
        if (!holds)
        {
            violations.Add("board: the extents stated in the drawing do not hold it");
        }
    }

    private double ToSlots(NetTopologySuite.Geometries.Geometry thing, double within)
    {
        Envelope near = thing.EnvelopeInternal.Copy();
        near.ExpandBy(within);
        return tree.Query(near)
            .Select(i => slots[i].Intersects(thing) ? 0 : DistanceOp.Distance(slots[i].ExteriorRing, thing))
            .DefaultIfEmpty(double.PositiveInfinity).Min();
    }

    private static Polygon Ring(IReadOnlyList<ArcVertex> chain)
    {
        Coordinate[] places = DieEdgeCheck.Walk(chain, Chord);
        return Factory.CreatePolygon([.. places, places[0].Copy()]);
    }

    private static LineString Line(IReadOnlyList<ArcVertex> chain) => chain.Count < 2
        ? Factory.CreateLineString([new Coordinate(chain[0].X, chain[0].Y), new Coordinate(chain[0].X, chain[0].Y)])
        : Factory.CreateLineString([.. chain.Select(v => new Coordinate(v.X, v.Y))]);

    private Polygon Placed(Coordinate[] edge, PlacedPanel placed)
    {
        (double sin, double cos) = Math.SinCos(placed.AngleDeg * Math.PI / 180);
        return Factory.CreatePolygon([.. edge.Append(edge[0]).Select(p =>
        {
            double x = placed.XMm + (p.X * cos) - (p.Y * sin);
            return new Coordinate(laser.Mirrored ? die.BoardLengthMm - x : x, placed.YMm + (p.X * sin) + (p.Y * cos));
        })]);
    }
}
