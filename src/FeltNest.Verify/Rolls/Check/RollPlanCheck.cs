using FeltNest.Layout;
using FeltNest.Layout.Check;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Check;

/// <summary>Verifies a roll plan from its numbers alone with NetTopologySuite; shares no code with the planner.</summary>
/// <remarks>The layout itself is checked first. The pattern must be the layout's repeats and tile it; strikes must lie on the roll and keep
/// the gap to each other (as in
/// <see cref="LayoutCheck"/>); every count must be what the shapes give. A panel whose distance from a fault, joint or edge is within 1e-4
/// mm of deciding may be counted either way.</remarks>
internal sealed class RollPlanCheck
{
    private const double Slack = 1e-4;
    private const int MostLines = 20;
    private static readonly GeometryFactory Factory = new();

    private readonly RollLayout layout;
    private readonly FeltRoll roll;
    private readonly StatedPlan plan;
    private readonly List<string> violations = [];
    private readonly Polygon[] shapes;
    private readonly NetTopologySuite.Geometries.Geometry[] faults;
    private double leastGap = double.PositiveInfinity;
    private int pairs;

    private RollPlanCheck(RollLayout layout, FeltRoll roll, StatedPlan plan)
    {
        (this.layout, this.roll, this.plan) = (layout, roll, plan);
        shapes = [.. plan.Panels.Select(panel => PlacedShape.Of(layout, panel))];
        faults = [.. roll.Faults.Select(FaultShape)];
    }

    /// <summary>What the check found.</summary>
    public static CheckVerdict Verify(RollLayout layout, FeltRoll roll, StatedPlan plan)
    {
        CheckVerdict lay = LayoutCheck.Verify(layout);
        RollPlanCheck check = new(layout, roll, plan);
        if (check.HasPattern())
        {
            check.CheckPlaces();
            check.CheckCounts();
        }
        else
        {
            check.Report("places and counts were not worked out: the pattern is not the layout");
        }

        return new CheckVerdict(
            Math.Min(lay.LeastGapMm!.Value, check.leastGap), lay.Pairs + check.pairs, [.. lay.Violations, .. check.violations]);
    }

    // Every panel of the repeat must stand in the pattern once for each repeat, at copies that differ from each other modulo the feed.
    private bool HasPattern()
    {
        LayoutRepeat repeat = layout.Bands[0].Repeat;
        double length = repeat.LengthMm;
        if (layout.Bands.Count > 1
            || plan.Repeats < 1
            || Math.Abs(plan.FeedMm - (plan.Repeats * length)) > Slack
            || plan.Panels.Count != plan.Repeats * repeat.Panels.Count)
        {
            Report(
                Invariant(
                    $"pattern: {plan.Panels.Count} panels on a feed of {plan.FeedMm:0.####} mm are not {plan.Repeats} repeats of "
                        + $"{repeat.Panels.Count} panels on {length:0.####} mm"));
            return false;
        }

        // The strike's frame is the layout's, moved along: the first panel says how far, up to whole repeats.
        double[] moves = [.. repeat.Panels.Where(p => Same(p, plan.Panels[0])).Select(p => plan.Panels[0].XMm - p.XMm)];
        bool tiles = moves.Any(move => repeat.Panels.All(home =>
        {
            long[] copies = [.. plan.Panels.Where(p => Same(home, p)).Select(p => (p.XMm - home.XMm - move) / length)
                .Where(k => Math.Abs(k - Math.Round(k)) * length <= Slack)
                .Select(k => (((long)Math.Round(k) % plan.Repeats) + plan.Repeats) % plan.Repeats)];
            return copies.Distinct().Count() == plan.Repeats;
        }));
        if (!tiles)
        {
            Report("pattern: its panels, laid one feed apart, are not the layout");
        }

        double first = shapes.Min(s => s.EnvelopeInternal.MinX);
        if (Math.Abs(first) > Slack)
        {
            Report(Invariant($"pattern: its first cut edge stands at {first:0.####} mm, not at 0"));
        }

        return tiles;
    }

    private static bool Same(PlacedPanel a, PlacedPanel b) =>
        a.Part == b.Part && Math.Abs(a.YMm - b.YMm) <= Slack && Math.Abs(Math.IEEERemainder(a.AngleDeg - b.AngleDeg, 360)) <= 1e-6;

    // Strikes in order, on the roll, within the guide's play, and no panel nearer than the gap to one of another strike.
    private void CheckPlaces()
    {
        HashSet<(double, double)> seen = [];
        double reach = shapes.Max(s => s.EnvelopeInternal.MaxX) + layout.GapMm;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            StatedStrike strike = plan.Strikes[i];
            if (strike.XMm < plan.FromMm - Slack || strike.XMm > roll.LengthMm + Slack)
            {
                Report(
                    Invariant(
                        $"strike {i + 1}: begins at {strike.XMm:0.####} mm, allowed {plan.FromMm:0.####} to {roll.LengthMm:0.####} mm"));
            }

            if (Math.Abs(strike.ShiftYMm) > plan.GuidePlayMm + Slack)
            {
                Report(
                    Invariant(
                        $"strike {i + 1}: moved across by {strike.ShiftYMm:0.####} mm, the side shift allowed is "
                            + $"{plan.GuidePlayMm:0.####} mm to "
                            + $"either side"));
            }

            for (int j = i + 1; j < plan.Strikes.Count && plan.Strikes[j].XMm - strike.XMm <= reach; j++)
            {
                double along = plan.Strikes[j].XMm - strike.XMm;
                double across = plan.Strikes[j].ShiftYMm - strike.ShiftYMm;
                if (along < -Slack)
                {
                    Report(Invariant($"strike {j + 1}: stands before strike {i + 1}"));
                }
                else if (seen.Add((Math.Round(along, 6), Math.Round(across, 6))))
                {
                    CheckApart(along, across, Invariant($"strikes {i + 1} and {j + 1}"));
                }
            }
        }
    }

    private void CheckApart(double along, double across, string which)
    {
        Polygon[] moved = [.. shapes.Select(s => Moved(s, along, across))];
        foreach (Polygon second in moved)
        {
            Envelope near = second.EnvelopeInternal.Copy();
            near.ExpandBy(layout.GapMm + 1);
            foreach (Polygon first in shapes.Where(s => s.EnvelopeInternal.Intersects(near)))
            {
                pairs++;
                bool apart = first.Disjoint(second);
                double distance = apart ? IndexedFacetDistance.Distance(first, second) : 0;
                leastGap = Math.Min(leastGap, distance);
                bool wrong = layout.GapMm > 0
                    ? distance < layout.GapMm - Slack
                    : !apart && first.Buffer(-Slack / 2).Intersects(second.Buffer(-Slack / 2));
                if (wrong)
                {
                    Report(Invariant($"{which}: panels {distance:0.#####} mm apart, gap {layout.GapMm:0.####} promised"));
                    return;
                }
            }
        }
    }

    private void CheckCounts()
    {
        long good = 0;
        long lost = 0;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            StatedStrike strike = plan.Strikes[i];
            (int least, int most) = Good(strike.XMm, strike.ShiftYMm);
            if (strike.GoodPanels < least || strike.GoodPanels > most || strike.GoodPanels + strike.LostPanels != shapes.Length)
            {
                Report(
                    Invariant(
                        $"strike {i + 1}: states {strike.GoodPanels} good and {strike.LostPanels} lost panels, the shapes give {most} "
                            + $"good of {shapes.Length}"));
            }

            (good, lost) = (good + strike.GoodPanels, lost + strike.LostPanels);
        }

        if (good != plan.GoodPanels || lost != plan.LostPanels)
        {
            Report(
                Invariant($"goodPanels, lostPanels: stated {plan.GoodPanels} and {plan.LostPanels}, the strikes add to {good} and {lost}"));
        }

        CheckInLine();
    }

    private void CheckInLine()
    {
        (int Least, int Most) inLine = (0, 0);
        for (int k = 0; plan.FeedMm > 0 && plan.FromMm + (k * plan.FeedMm) <= roll.LengthMm; k++)
        {
            (int least, int most) = Good(plan.FromMm + (k * plan.FeedMm), 0);
            inLine = (inLine.Least + least, inLine.Most + most);
        }

        if (plan.BackToBackGoodPanels < inLine.Least || plan.BackToBackGoodPanels > inLine.Most)
        {
            Report(Invariant($"backToBackGoodPanels: stated {plan.BackToBackGoodPanels}, the shapes give {inLine.Most}"));
        }

        if (plan.GoodPanels < plan.BackToBackGoodPanels)
        {
            Report(Invariant($"goodPanels: {plan.GoodPanels} are fewer than the {plan.BackToBackGoodPanels} of strikes in line"));
        }
    }

    // Panels that are good beyond doubt, and those that may be counted good.
    private (int Least, int Most) Good(double x, double shift)
    {
        int least = 0;
        int most = 0;
        foreach (Polygon home in shapes)
        {
            double room = Room(Moved(home, x, shift));
            (least, most) = (least + (room > Slack ? 1 : 0), most + (room >= -Slack ? 1 : 0));
        }

        return (least, most);
    }

    // How much room a panel has to whatever would make it a loss, mm; below 0 where it is one.
    private double Room(Polygon panel)
    {
        Envelope box = panel.EnvelopeInternal;
        double top = box.MaxY + layout.Trims.UpperMm;
        double room = Math.Min(roll.LengthMm - box.MaxX, box.MinY - layout.Trims.LowerMm);

        // The least width over the span stands at one of its ends or at a reading between them.
        double[] places = [box.MinX, box.MaxX, .. roll.Widths.Select(w => w.XMm).Where(at => at > box.MinX && at < box.MaxX)];
        room = Math.Min(room, places.Min(Width) - top);
        foreach ((double low, double high) in layout.Rules.Forbidden.Select(f => (f.YFromMm, f.YToMm)))
        {
            room = Math.Min(room, Math.Max(box.MinY - high, low - box.MaxY));
        }

        // An exact edge of the layout stands exactly on the trim: that is inside.
        room += 2 * Slack;
        foreach (double joint in roll.JointsMm)
        {
            room = Math.Min(room, Math.Max(joint - box.MaxX, box.MinX - joint));
        }

        for (int i = 0; i < faults.Length && room > -Slack; i++)
        {
            Envelope near = faults[i].EnvelopeInternal.Copy();
            near.ExpandBy((roll.Faults[i].RadiusMm ?? 0) + 1);
            if (near.Intersects(box))
            {
                // A fault that reaches deeper than the slack is a loss beyond doubt: shrunk by it, the panel still meets the fault.
                double distance = faults[i].Distance(panel) - (roll.Faults[i].RadiusMm ?? 0);
                bool deep =
                    distance <= 0 && (distance < -Slack || panel.Buffer(-Slack).Distance(faults[i]) <= (roll.Faults[i].RadiusMm ?? 0));
                room = Math.Min(room, deep ? -2 * Slack : distance);
            }
        }

        return room;
    }

    private double Width(double x)
    {
        WidthReading before = roll.Widths.LastOrDefault(w => w.XMm <= x, roll.Widths[0]);
        WidthReading after = roll.Widths.FirstOrDefault(w => w.XMm >= x, roll.Widths[^1]);
        return after.XMm <= before.XMm
            ? before.WidthMm
            : before.WidthMm + ((x - before.XMm) / (after.XMm - before.XMm) * (after.WidthMm - before.WidthMm));
    }

    private static NetTopologySuite.Geometries.Geometry FaultShape(RollFault fault) => fault.RadiusMm is not null
        ? Factory.CreatePoint(new Coordinate(fault.MiddleX, fault.MiddleY))
        : Factory.ToGeometry(new Envelope(fault.XMm, fault.XMm + fault.LengthMm, fault.YMm, fault.YMm + fault.WidthMm));

    private static Polygon Moved(Polygon home, double x, double y) =>
        Factory.CreatePolygon([.. home.Coordinates.Select(c => new Coordinate(c.X + x, c.Y + y))]);

    private void Report(string line)
    {
        if (violations.Count < MostLines)
        {
            violations.Add(line);
        }
    }
}
