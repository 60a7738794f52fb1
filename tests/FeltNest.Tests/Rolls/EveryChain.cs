using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;

namespace FeltNest.Tests.Rolls;

/// <summary>The long way round: every set of strikes on the grid whose panels keep the gap, all pairs tested, shapes by
/// NetTopologySuite.</summary>
internal sealed class EveryChain
{
    private static readonly GeometryFactory Factory = new();

    private readonly RollPlan plan;
    private readonly (double X, double Y, int Good)[] places;
    private readonly Dictionary<(double, double), bool> apart = [];

    internal EveryChain(RollPlan plan)
    {
        this.plan = plan;
        StrikeGrid grid = plan.Grid;
        places = [.. from k in Enumerable.Range(0, grid.Places)
                     from s in Enumerable.Range(0, grid.Shifts)
                     let good = Good(grid.XMm(k), grid.ShiftMm(s))
                     where good > 0 && IsMade(grid.XMm(k))
                     select (grid.XMm(k), grid.ShiftMm(s), good)];
    }

    /// <summary>Most good panels of any set.</summary>
    internal int Best() => Best(0, []);

    private int Best(int next, List<int> chosen)
    {
        int best = 0;
        for (int i = next; i < places.Length; i++)
        {
            // A strike nearer than the feed would let the pattern lie inside the one before it: the press only feeds forward.
            if (chosen.TrueForAll(c => places[i].X - places[c].X >= plan.Pattern.FeedMm - 1e-9 && Apart(c, i)))
            {
                chosen.Add(i);
                best = Math.Max(best, places[i].Good + Best(i + 1, chosen));
                chosen.RemoveAt(chosen.Count - 1);
            }
        }

        return best;
    }

    private bool Apart(int first, int second)
    {
        double x = places[second].X - places[first].X;
        double y = places[second].Y - places[first].Y;
        double feeds = x / plan.Pattern.FeedMm;
        if (Math.Abs(y) < 1e-9 && Math.Abs(feeds - Math.Round(feeds)) < 1e-9)
        {
            return true;
        }

        (double, double) key = (Math.Round(x, 6), Math.Round(y, 6));
        if (!apart.TryGetValue(key, out bool far))
        {
            Polygon[] shapes = [.. plan.Pattern.Panels.Select(p => Shape(p, 0, 0))];
            far = apart[
                key] = shapes.All(a =>
                    plan.Pattern.Panels.Select(p => Shape(p, x, y)).All(b => a.Distance(b) >= plan.Request.Layout.GapMm));
        }

        return far;
    }

    private bool IsMade(double x)
    {
        FeltRoll roll = plan.Request.Roll;
        double end = x + plan.Pattern.Panels.Max(p => p.MaxX);
        return (plan.Request.PastEnd || end <= roll.LengthMm + 1e-6)
            && roll.Splices.All(s => s.ClearMm == 0 || end < s.XMm - s.ClearMm || x > s.XMm + s.ClearMm);
    }

    private int Good(double x, double y) => plan.Pattern.Panels.Select(p => Shape(p, x, y)).Count(IsGood);

    private bool IsGood(Polygon panel)
    {
        FeltRoll roll = plan.Request.Roll;
        RollLayout layout = plan.Request.Layout;
        Envelope box = panel.EnvelopeInternal;
        double least =
            roll.Widths.Select(w => w.XMm).Where(at => at > box.MinX && at < box.MaxX).Append(box.MinX).Append(box.MaxX).Min(roll.WidthAt);
        return box.MaxX <= roll.LengthMm + 1e-6
            && box.MinY >= layout.Trims.LowerMm - 1e-6
            && box.MaxY <= least - layout.Trims.UpperMm + 1e-6
            && roll.Splices.All(s => s.XMm < box.MinX || s.XMm > box.MaxX)
            && roll.Faults.All(f => f.RadiusMm is { } r
                ? Factory.CreatePoint(new Coordinate(f.MiddleX, f.MiddleY)).Distance(panel) > r
                : !Factory.ToGeometry(new Envelope(f.XMm, f.XMm + f.LengthMm, f.YMm, f.YMm + f.WidthMm)).Intersects(panel));
    }

    private static Polygon Shape(StrikePanel panel, double x, double y)
    {
        Polygon home = Factory.CreatePolygon([.. panel.Corners.Append(panel.Corners[0]).Select(p => new Coordinate(p.X, p.Y))]);
        return (Polygon)AffineTransformation.TranslationInstance(x, y).Transform(home);
    }
}
