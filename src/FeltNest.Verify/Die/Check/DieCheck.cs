using FeltNest.Die.Edge;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using NetTopologySuite.Operation.Distance;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Check;

/// <summary>Verifies a die from its file alone with NetTopologySuite; shares no code with the design.</summary>
/// <remarks>Strikes at every place one feed apart must be the layout's band, each panel once. Edges may lie 0.02 mm off the true outline.
/// Gaps are measured again, between strikes at 25 places of the play of feed and guide. Where no gap is left, the rule that cavities share
/// is measured again (<see cref="CommonCutCheck"/>). The layout itself is checked by <see cref="LayoutCheck"/>.</remarks>
public sealed class DieCheck
{
    private const double PlaceSlack = 1e-4;
    private const double GapSlack = 1e-3;
    private const double EdgeMost = 0.02;
    private const double EdgeSlack = 1e-4;

    // How far the arcs of a computed panel may lie off its curve, mm, as its file promises.
    private const double PanelArcsMm = 0.01;

    // Feeds over which one strike may reach: those of real dies reach over two or three.
    private const int MostFeedsOver = 100;

    // Gaps of so much and more count as clear, mm.
    private const double Far = 50;

    private static readonly GeometryFactory Factory = new();

    private readonly RollLayout layout;
    private readonly StatedDie die;
    private readonly List<string> violations = [];
    private double least = double.PositiveInfinity;
    private int pairs;

    private DieCheck(RollLayout layout, StatedDie die) => (this.layout, this.die) = (layout, die);

    /// <summary>Checks a die; the verdict's gap is the least between two cuts of one strike or of two.</summary>
    public static LayoutVerdict Verify(RollLayout layout, StatedDie die) => new DieCheck(layout, die).Run();

    private LayoutVerdict Run()
    {
        LayoutVerdict lay = LayoutCheck.Verify(layout);
        violations.AddRange(lay.Violations);
        CheckEdges();

        CheckGaps(Tiles());
        CheckBoard();
        double shared = layout.GapMm == 0 || die.CommonCuts.Count > 0 ? new CommonCutCheck(die).Run(die, violations) : 0;
        foreach ((string field, double stated, double found, double slack) in RuleLengthCheck.Of(layout, die, shared))
        {
            Same(field, stated, found, slack);
        }

        Same("forceKn", die.ForceKn, die.Force.Kn, 1e-6 * die.Force.Kn);
        return new LayoutVerdict(least, pairs, violations);
    }

    private bool Tiles()
    {
        LayoutRepeat repeat = layout.Bands[die.Band].Repeat;
        double repeats = die.FeedMm / repeat.LengthMm;
        int count = (int)Math.Round(repeats);
        if (count < 1 || Math.Abs((count * repeat.LengthMm) - die.FeedMm) > PlaceSlack)
        {
            violations.Add(Invariant($"feed {die.FeedMm:0.####} mm is not a whole number of repeats of {repeat.LengthMm:0.####} mm"));
            return false;
        }

        long struck = (long)die.Cavities.Count * die.Places.Count;
        long wanted = (long)count * repeat.Panels.Count;
        if (struck != wanted)
        {
            violations.Add($"strikes do not tile the layout: {struck} cuts to a feed, which has {wanted} panels");
            return false;
        }

        OpenPanels open = new(die.FeedMm);
        for (int k = 0; k < count; k++)
        {
            foreach (PlacedPanel panel in repeat.Panels)
            {
                open.Add(panel with { XMm = panel.XMm + (k * repeat.LengthMm) });
            }
        }

        int missed = 0;
        foreach (Point2 place in die.Places)
        {
            foreach (PlacedPanel cavity in die.Cavities)
            {
                missed +=
                    open.Take(cavity with { XMm = cavity.XMm + die.Origin.X + place.X, YMm = cavity.YMm + die.Origin.Y + place.Y }) ? 0 : 1;
            }
        }

        if (missed > 0 || open.Count > 0)
        {
            violations.Add(
                $"strikes do not tile the layout: of {struck} cuts to a feed {missed} are no panel of it (or one cut twice), of "
                    + $"{wanted} panels {open.Count} are missed");
            return false;
        }

        return true;
    }

    private void CheckEdges()
    {
        foreach (int part in die.Cavities.Select(c => c.Part).Distinct())
        {
            DieEdge edge = new()
            {
                Arcs = die.Edges[part],
                Corners = [],
                OffLayoutMm = 0,
                LayoutOffMm = 0,
                Mirrors = EdgeMirrors.None,
                HalfTurn = false,
            };
            EdgeVerdict found = DieEdgeCheck.Measure(layout.Parts[part], edge);
            double most = EdgeMost - (layout.Parts[part].Ball is null ? 0 : PanelArcsMm) + EdgeSlack;
            if (found.OffMm > most)
            {
                violations.Add(
                    Invariant(
                        $"edge of part {part}: {found.OffMm:0.####} mm off the outline of the layout, at most {most:0.####} is allowed"));
            }

            if (found.TangentBreakDeg > 0.1)
            {
                violations.Add(
                    Invariant(
                        $"edge of part {part}: bends by {found.TangentBreakDeg:0.###} degrees at a joint where the part has no corner"));
            }
        }
    }

    private void CheckGaps(bool tiles)
    {
        Polygon[] shapes = [.. die.Cavities.Select(Place)];
        STRtree<int> tree = new();
        for (int i = 0; i < shapes.Length; i++)
        {
            tree.Insert(shapes[i].EnvelopeInternal, i);
        }

        double within = Between(shapes, tree, default, true);
        if (!(double.IsInfinity(within) && double.IsInfinity(die.LeastGapMm)))
        {
            Same("leastGapMm", die.LeastGapMm, within, GapSlack);
        }

        // Gaps between strikes that are not the layout are gaps of nothing, and there may be any number of them.
        least = within;
        if (!tiles)
        {
            violations.Add("gaps between strikes were not measured: the strikes are not the layout");
            return;
        }

        double feedsOver = (shapes.Max(s => s.EnvelopeInternal.MaxX) - shapes.Min(s => s.EnvelopeInternal.MinX)
            + die.Places.Max(p => Math.Abs(p.X))) / die.FeedMm;
        if (feedsOver > MostFeedsOver)
        {
            violations.Add(
                Invariant(
                    $"gaps between strikes were not measured: cavities and places reach over {feedsOver:0} feeds, at most "
                        + $"{MostFeedsOver} are"));
            return;
        }

        int feeds = (int)Math.Ceiling(feedsOver) + 1;
        (double Nominal, double Worst) along = (double.PositiveInfinity, double.PositiveInfinity);
        (double Nominal, double Worst) across = along;
        Envelope all = new();
        foreach (Polygon shape in shapes)
        {
            all.ExpandToInclude(shape.EnvelopeInternal);
        }

        foreach ((Point2 from, Point2 to, int k) in die.Places.SelectMany(a =>
            die.Places.SelectMany(b => Enumerable.Range(0, feeds + 1).Select(k => (a, b, k)))))
        {
            // A die that stands further off than what counts as clear is not measured.
            double offX = Math.Abs(to.X - from.X + (k * die.FeedMm)) - (die.FeedToleranceMm * Math.Max(1, k)) - Far;
            double offY = Math.Abs(to.Y - from.Y) - (2 * die.GuideToleranceMm) - Far;
            if ((k > 0 || from != to) && offX <= all.Width && offY <= all.Height)
            {
                (double nominal, double worst) = Moved(shapes, tree, new(to.X - from.X + (k * die.FeedMm), to.Y - from.Y), k);
                along = (Math.Min(along.Nominal, nominal), Math.Min(along.Worst, worst));
                across = from == to ? across : (Math.Min(across.Nominal, nominal), Math.Min(across.Worst, worst));
            }
        }

        least = Math.Min(within, along.Nominal);
        double band = ToBands(shapes);
        Joint(
            "nominalMm", "worstMm", "strikes can cut into each other at the worst feed", along.Nominal, along.Worst, die.NominalJointMm,
            die.WorstJointMm);
        Joint(
            "acrossMm", "acrossWorstMm", "strikes side by side can cut into each other", across.Nominal, across.Worst, die.AcrossMm,
            die.AcrossWorstMm);
        Joint(
            "bandMm", "bandWorstMm", "the die can cut into the band beside", band, band - (2 * die.GuideToleranceMm), die.BandMm,
            die.BandWorstMm);
    }

    // Gap to the die struck once more at a move: in place, and at 25 places of the play of feed and guide.
    private (double Nominal, double Worst) Moved(Polygon[] shapes, STRtree<int> tree, Point2 move, int feeds)
    {
        double worst = double.PositiveInfinity;
        for (int i = -2; i <= 2; i++)
        {
            for (int j = -2; j <= 2; j++)
            {
                Point2 play = new(i / 2.0 * die.FeedToleranceMm * Math.Max(1, feeds), j * die.GuideToleranceMm);
                worst = Math.Min(worst, Between(shapes, tree, new Point2(move.X + play.X, move.Y + play.Y), false));
            }
        }

        return (Between(shapes, tree, move, false), worst);
    }

    // Room across between what the die cuts at all its places and the panels of every other band of the layout.
    private double ToBands(Polygon[] shapes)
    {
        double low = shapes.Min(s => s.EnvelopeInternal.MinY) + die.Origin.Y + die.Places.Min(p => p.Y);
        double high = shapes.Max(s => s.EnvelopeInternal.MaxY) + die.Origin.Y + die.Places.Max(p => p.Y);
        double room = double.PositiveInfinity;
        foreach (PlacedPanel panel in layout.Bands.Where((_, i) => i != die.Band).SelectMany(b => b.Repeat.Panels))
        {
            Envelope other = Place(panel).EnvelopeInternal;
            room = Math.Min(room, Math.Max(other.MinY - high, low - other.MaxY));
        }

        return room;
    }

    private void Joint(string name, string worstName, string told, double found, double foundWorst, double stated, double statedWorst)
    {
        if (double.IsInfinity(found) && double.IsInfinity(stated))
        {
            return;
        }

        Same($"joint.{name}", stated, found, GapSlack);
        if (statedWorst > foundWorst - die.EdgeProfileMm + GapSlack)
        {
            violations.Add(
                Invariant($"joint.{worstName}: {statedWorst:0.####} is stated, {foundWorst - die.EdgeProfileMm:0.####} was found"));
        }

        if (statedWorst <= 0 && layout.GapMm > 0)
        {
            violations.Add(told);
        }
    }

    // Least distance of the cavities, which the tree finds by their boxes, to all of them moved; 50 mm and more count as clear.
    private double Between(Polygon[] shapes, STRtree<int> tree, Point2 move, bool same)
    {
        double best = double.PositiveInfinity;
        for (int k = 0; k < shapes.Length; k++)
        {
            Envelope near = shapes[k].EnvelopeInternal.Copy();
            near.Translate(move.X, move.Y);
            near.ExpandBy(Math.Min(best, Far));
            Polygon? moved = null;
            foreach (int i in tree.Query(near).Order())
            {
                if (same && i >= k)
                {
                    continue;
                }

                moved ??= move == default
                    ? shapes[k]
                    : Factory.CreatePolygon([.. shapes[k].Coordinates.Select(c => new Coordinate(c.X + move.X, c.Y + move.Y))]);
                if (shapes[i].EnvelopeInternal.Distance(moved.EnvelopeInternal) < best)
                {
                    pairs++;
                    best = Math.Min(
                        best,
                        shapes[i].Contains(Factory.CreatePoint(moved.Coordinate)) ? 0 : IndexedFacetDistance.Distance(shapes[i], moved));
                }
            }
        }

        return best;
    }

    private void CheckBoard()
    {
        foreach ((PlacedPanel cavity, int i) in die.Cavities.Select((c, i) => (c, i)))
        {
            Envelope at = Place(cavity).EnvelopeInternal;
            double land = Math.Min(Math.Min(at.MinX, at.MinY), Math.Min(die.BoardLengthMm - at.MaxX, die.BoardWidthMm - at.MaxY));
            if (land < die.LandMm - PlaceSlack)
            {
                violations.Add(Invariant($"cavity {i + 1}: {land:0.###} mm from the board's side, {die.LandMm:0.###} is promised"));
                return;
            }
        }
    }

    private void Same(string field, double stated, double found, double slack)
    {
        if (!(Math.Abs(stated - found) <= slack))
        {
            violations.Add(Invariant($"{field}: {stated:0.######} is stated, {found:0.######} was found"));
        }
    }

    private Polygon Place(PlacedPanel placed)
    {
        double angle = placed.AngleDeg * Math.PI / 180;
        double cos = Math.Cos(angle);
        double sin = Math.Sin(angle);
        IReadOnlyList<Point2> points = layout.Parts[placed.Part].Outline.Points;
        return Factory.CreatePolygon([
            .. points
                .Append(points[0])
                .Select(p => new Coordinate(placed.XMm + (p.X * cos) - (p.Y * sin), placed.YMm + (p.X * sin) + (p.Y * cos))),
        ]);
    }
}
