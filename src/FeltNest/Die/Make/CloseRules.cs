using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Die.Gang;
using FeltNest.Die.SharedRule;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Die.Make;

/// <summary>Length of rule that has another rule close by.</summary>
internal static class CloseRules
{
    // The edge is looked at in steps of this, mm.
    private const double Step = 2;

    // A place of the outline this near to a shared run is on it, mm: the edge itself may lie 0.02 off the outline.
    private const double OnRun = 0.05;

    /// <summary>Length of edge of all cavities that has another cavity's edge, or another stretch of its own, within reach, mm. A common
    /// cut is looked at once, and as the edge of both its cavities.</summary>
    public static double LengthMm(
        IReadOnlyList<LayoutPart> parts, IReadOnlyList<DieCavity> cavities, CommonCuts common, double reachMm, DieWork work)
    {
        (Point2[] Places, double Share)[] walked = [.. cavities.Select(c => Walk(parts[c.Placed.Part], c.Placed))];
        List<(Point2 Place, int Cavity, int Other, int At)> places = [];
        for (int i = 0; i < walked.Length; i++)
        {
            work.Look(walked[i].Places.Length);
            (RuleRun Run, IReadOnlyList<EdgePiece> Pieces)[] shared =
            [
                .. common.Of(i).Where(r => r.Other is not null).Select(r => (r, r.Pieces)),
            ];
            foreach ((int at, Point2 p) in walked[i].Places.Index())
            {
                RuleRun? run = shared.FirstOrDefault(r => r.Pieces.Any(piece => piece.DistanceTo(p) < OnRun)).Run;
                if (run is null || run.Cavity == i)
                {
                    places.Add((p, i, run?.Other ?? i, at));
                }
            }
        }

        Dictionary<int, bool[]> own = cavities.Select((c, i) => (c.Placed.Part, walked[i].Places)).DistinctBy(c => c.Part)
            .ToDictionary(c => c.Part, c => Own(c.Places, reachMm, parts[c.Part].Outline.Perimeter / c.Places.Length, work));
        PlaceGrid<(Point2 Place, int Cavity, int Other)> grid = new(reachMm + Step);
        foreach ((Point2 p, int cavity, int other, _) in places)
        {
            grid.Add(p, (p, cavity, other));
        }

        return places
            .Where(p => own[cavities[p.Cavity].Placed.Part][p.At] || Close(grid, p.Place, (p.Cavity, p.Other), reachMm, work))
            .Sum(p => walked[p.Cavity].Share);
    }

    // Half a step across leaves a place at most this much further off than the edge it stands for.
    private static double Far(double reach) => Math.Sqrt((reach * reach) + (Step * Step / 4));

    // Places of one edge that another stretch of the same edge comes near, as in a neck, a slit or a sharp corner.
    private static bool[] Own(Point2[] places, double reach, double share, DieWork work)
    {
        PlaceGrid<int> grid = new(reach + Step);
        foreach ((int i, Point2 p) in places.Index())
        {
            grid.Add(p, i);
        }

        bool Another(int i, int k)
        {
            double wide = (places[k] - places[i]).Length;
            int steps = Math.Abs(i - k);
            return wide <= Far(reach) && Math.Min(steps, places.Length - steps) * share > NarrowPlace.AnotherRule * wide;
        }

        return [.. places.Select((p, i) =>
        {
            work.Look();
            return grid.Near(p, Far(reach)).Any(k => Another(i, k));
        })];
    }

    private static bool Close(
        PlaceGrid<(Point2 Place, int Cavity, int Other)> grid, Point2 p, (int Cavity, int Other) own, double reach, DieWork work)
    {
        bool Apart((Point2 Place, int Cavity, int Other) n) =>
            n.Cavity != own.Cavity && n.Cavity != own.Other && n.Other != own.Cavity && n.Other != own.Other;

        double far = Far(reach);
        work.Look();
        return grid.Near(p, far).Any(n => Apart(n) && (n.Place - p).Length <= far);
    }

    private static (Point2[] Places, double Share) Walk(LayoutPart part, PlacedPanel placed)
    {
        Outline outline = part.Outline.Turned(double.DegreesToRadians(placed.AngleDeg)).Moved(new Point2(placed.XMm, placed.YMm));
        int count = (int)Math.Ceiling(outline.Perimeter / Step);
        double share = outline.Perimeter / count;
        double left = share / 2;
        List<Point2> places = [];
        for (int i = 0; i < outline.Points.Count; i++)
        {
            Point2 a = outline.Points[i];
            Point2 way = outline.Points[(i + 1) % outline.Points.Count] - a;
            double length = way.Length;
            for (; left < length; left += share)
            {
                places.Add(a + (way * (left / length)));
            }

            left -= length;
        }

        return ([.. places], part.PerimeterMm / count);
    }
}
