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
    private readonly PanelRoom rooms;
    private readonly double cutMm;
    private double leastGap = double.PositiveInfinity;
    private int pairs;

    private RollPlanCheck(RollLayout layout, FeltRoll roll, StatedPlan plan)
    {
        (this.layout, this.roll, this.plan) = (layout, roll, plan);
        shapes = [.. plan.Panels.Select(panel => PlacedShape.Of(layout, panel))];
        cutMm = shapes.Select(s => s.EnvelopeInternal.MaxX).DefaultIfEmpty(0).Max();
        rooms = new PanelRoom(layout, roll);
    }

    /// <summary>What the check found.</summary>
    public static CheckVerdict Verify(RollLayout layout, FeltRoll roll, StatedPlan plan)
    {
        CheckVerdict lay = LayoutCheck.Verify(layout);
        RollPlanCheck check = new(layout, roll, plan);
        string[] unlike = [.. PatternRules.Broken(layout, plan, check.shapes)];
        check.violations.AddRange(unlike);
        if (PatternRules.AreRepeats(layout, plan) && !unlike.Contains(PatternRules.NotTheLayout))
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

    // Strikes in order, on the roll, within the guide's play, and no panel nearer than the gap to one of another strike.
    private void CheckPlaces()
    {
        HashSet<(double, double)> seen = [];
        double reach = shapes.Max(s => s.EnvelopeInternal.MaxX) + layout.GapMm;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            StatedStrike strike = plan.Strikes[i];
            CheckPlace(strike, i + 1);
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

    // A strike on the roll, clear of splices and within the guide's play.
    private void CheckPlace(StatedStrike strike, int number)
    {
        if (strike.XMm < plan.FromMm - Slack || strike.XMm > roll.LengthMm + Slack)
        {
            Report(
                Invariant(
                    $"strike {number}: begins at {strike.XMm:0.####} mm, allowed {plan.FromMm:0.####} to {roll.LengthMm:0.####} mm"));
        }

        if (!IsOnRoll(strike.XMm, Slack))
        {
            Report(Invariant(
                $"strike {number}: reaches to {strike.XMm + cutMm:0.####} mm, past the end of the roll at {roll.LengthMm:0.####} mm"));
        }

        if (!IsClear(strike.XMm, Slack))
        {
            Report(Invariant(
                $"strike {number}: from {strike.XMm:0.####} to {strike.XMm + cutMm:0.####} mm touches a splice's clear length"));
        }

        if (Math.Abs(strike.ShiftYMm) > plan.GuidePlayMm + Slack)
        {
            Report(
                Invariant(
                    $"strike {number}: moved across by {strike.ShiftYMm:0.####} mm, the side shift allowed is "
                        + $"{plan.GuidePlayMm:0.####} mm to "
                        + $"either side"));
        }
    }

    // Whether a strike may stand at a place, so far beyond what is allowed or, below 0, inside it.
    private bool IsOnRoll(double x, double slackMm) => plan.PastEnd || x + cutMm <= roll.LengthMm + slackMm;

    private bool IsClear(double x, double slackMm) => !roll.Splices.Any(s =>
        s.ClearMm > 0 && x + cutMm > s.XMm - s.ClearMm + slackMm && x < s.XMm + s.ClearMm - slackMm);

    private bool IsMade(double x, double slackMm) => IsOnRoll(x, slackMm) && IsClear(x, slackMm);

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
        PartTally parts = new(layout, plan);
        long good = 0;
        long lost = 0;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            StatedStrike strike = plan.Strikes[i];
            (int least, int most) = Good(strike.XMm, strike.ShiftYMm, parts);
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

        foreach (string line in parts.Broken())
        {
            Report(line);
        }

        if (plan.Better is { } better
            && !(Math.Abs(better.GainPercent - (100.0 * (better.GoodPanels - good) / good)) <= Slack && better.GoodPanels > good))
        {
            Report(Invariant(
                $"better: {better.GoodPanels} good panels and {better.GainPercent:0.####} % stated, where {good} are planned"));
        }

        CheckInLine();
    }

    private void CheckInLine()
    {
        (int Least, int Most) inLine = (0, 0);
        for (int k = 0; plan.FeedMm > 0 && plan.FromMm + (k * plan.FeedMm) <= roll.LengthMm; k++)
        {
            double x = plan.FromMm + (k * plan.FeedMm);
            (int least, int most) = Good(x, 0);
            inLine = (inLine.Least + (IsMade(x, -Slack) ? least : 0), inLine.Most + (IsMade(x, Slack) ? most : 0));
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
    private (int Least, int Most) Good(double x, double shift, PartTally? tally = null)
    {
        int least = 0;
        int most = 0;
        for (int i = 0; i < shapes.Length; i++)
        {
            double room = rooms.Of(Moved(shapes[i], x, shift));
            (bool surely, bool perhaps) = (room > Slack, room >= -Slack);
            (least, most) = (least + (surely ? 1 : 0), most + (perhaps ? 1 : 0));
            tally?.Add(i, surely, perhaps);
        }

        return (least, most);
    }

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
