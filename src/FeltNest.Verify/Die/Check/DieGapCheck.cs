using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using NetTopologySuite.Operation.Distance;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Check;

/// <summary>Measures the gaps of a die with NetTopologySuite: inside it, between its strikes, and to the bands beside.</summary>
internal sealed class DieGapCheck
{
    private const double GapSlack = 1e-3;

    // Feeds over which one strike may reach: those of real dies reach over two or three.
    private const int MostFeedsOver = 100;

    // Gaps of so much and more count as clear, mm.
    private const double Far = 50;

    private readonly RollLayout layout;
    private readonly StatedDie die;
    private readonly List<string> violations;
    private readonly Polygon[] shapes;
    private readonly STRtree<int> tree = new();

    /// <summary>A check of a die; what is wrong is added to the violations.</summary>
    public DieGapCheck(RollLayout layout, StatedDie die, List<string> violations)
    {
        (this.layout, this.die, this.violations) = (layout, die, violations);
        shapes = [.. die.Cavities.Select(cavity => PlacedShape.Of(layout, cavity))];
        for (int i = 0; i < shapes.Length; i++)
        {
            tree.Insert(shapes[i].EnvelopeInternal, i);
        }
    }

    /// <summary>Least gap between two cuts of one strike or of two, mm; infinite where there is none.</summary>
    public double LeastMm { get; private set; } = double.PositiveInfinity;

    /// <summary>Pairs measured.</summary>
    public int Pairs { get; private set; }

    /// <summary>Measures the gaps of the die, and where its strikes are the layout those between strikes and to other bands.</summary>
    public void Run(bool tiles)
    {
        double within = Between(default, true);
        if (!(double.IsInfinity(within) && double.IsInfinity(die.LeastGapMm)))
        {
            StatedNumber.Same(violations, "leastGapMm", die.LeastGapMm, within, GapSlack);
        }

        // Gaps between strikes that are not the layout are gaps of nothing, and there may be any number of them.
        LeastMm = within;
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

        BetweenStrikes(within, (int)Math.Ceiling(feedsOver) + 1);
    }

    private void BetweenStrikes(double within, int feeds)
    {
        ((double Nominal, double Worst) along, (double Nominal, double Worst) across) = Joints(feeds);
        LeastMm = Math.Min(within, along.Nominal);
        double band = ToBands();
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

    // Least gaps between any two strikes up to so many feeds apart, and between those that stand side by side.
    private ((double Nominal, double Worst) Along, (double Nominal, double Worst) Across) Joints(int feeds)
    {
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
                (double nominal, double worst) = Moved(new(to.X - from.X + (k * die.FeedMm), to.Y - from.Y), k);
                along = (Math.Min(along.Nominal, nominal), Math.Min(along.Worst, worst));
                across = from == to ? across : (Math.Min(across.Nominal, nominal), Math.Min(across.Worst, worst));
            }
        }

        return (along, across);
    }

    // Gap to the die struck once more at a move: in place, and at 25 places of the play of feed and guide.
    private (double Nominal, double Worst) Moved(Point2 move, int feeds)
    {
        double worst = double.PositiveInfinity;
        for (int i = -2; i <= 2; i++)
        {
            for (int j = -2; j <= 2; j++)
            {
                Point2 play = new(i / 2.0 * die.FeedToleranceMm * Math.Max(1, feeds), j * die.GuideToleranceMm);
                worst = Math.Min(worst, Between(new Point2(move.X + play.X, move.Y + play.Y), false));
            }
        }

        return (Between(move, false), worst);
    }

    // Room across between what the die cuts at all its places and the panels of every other band of the layout.
    private double ToBands()
    {
        double low = shapes.Min(s => s.EnvelopeInternal.MinY) + die.Origin.Y + die.Places.Min(p => p.Y);
        double high = shapes.Max(s => s.EnvelopeInternal.MaxY) + die.Origin.Y + die.Places.Max(p => p.Y);
        double room = double.PositiveInfinity;
        foreach (PlacedPanel panel in layout.Bands.Where((_, i) => i != die.Band).SelectMany(b => b.Repeat.Panels))
        {
            Envelope other = PlacedShape.Of(layout, panel).EnvelopeInternal;
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

        StatedNumber.Same(violations, $"joint.{name}", stated, found, GapSlack);
        // Strikes of one cavity alone shift together.
        double least = foundWorst - die.EdgeProfileMm - (die.Cavities.Count > 1 ? die.PositionMm : 0);
        if (statedWorst > least + GapSlack)
        {
            violations.Add(Invariant($"joint.{worstName}: {statedWorst:0.####} is stated, {least:0.####} was found"));
        }

        if (statedWorst <= 0 && layout.GapMm > 0)
        {
            violations.Add(told);
        }
    }

    // Least distance of the cavities, which the tree finds by their boxes, to all of them moved; 50 mm and more count as clear.
    private double Between(Point2 move, bool same)
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
                    : PlacedShape.Factory.CreatePolygon([.. shapes[k].Coordinates.Select(c => new Coordinate(c.X + move.X, c.Y + move.Y))]);
                if (shapes[i].EnvelopeInternal.Distance(moved.EnvelopeInternal) < best)
                {
                    Pairs++;
                    best = Math.Min(
                        best,
                        shapes[i].Contains(PlacedShape.Factory.CreatePoint(moved.Coordinate))
                            ? 0
                            : IndexedFacetDistance.Distance(shapes[i], moved));
                }
            }
        }

        return best;
    }
}
