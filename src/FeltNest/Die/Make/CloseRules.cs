using FeltNest.Die.Gang;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Die.Make;

/// <summary>Length of rule that has another rule close by.</summary>
internal static class CloseRules
{
    // The edge is looked at in steps of this, mm.
    private const double Step = 2;

    /// <summary>Length of edge of all cavities that has another cavity's edge within reach, mm.</summary>
    public static double LengthMm(IReadOnlyList<LayoutPart> parts, IReadOnlyList<DieCavity> cavities, double reachMm)
    {
        (Point2[] Places, double Share)[] walked = [.. cavities.Select(c => Walk(parts[c.Placed.Part], c.Placed))];
        double cell = reachMm + Step;
        Dictionary<(int, int), List<(int Cavity, Point2 Place)>> grid = [];
        for (int i = 0; i < walked.Length; i++)
        {
            foreach (Point2 p in walked[i].Places)
            {
                (int, int) key = ((int)Math.Floor(p.X / cell), (int)Math.Floor(p.Y / cell));
                (grid.TryGetValue(key, out List<(int, Point2)>? list) ? list : grid[key] = []).Add((i, p));
            }
        }

        double length = 0;
        for (int i = 0; i < walked.Length; i++)
        {
            foreach (Point2 p in walked[i].Places)
            {
                length += Close(grid, p, i, cell, reachMm) ? walked[i].Share : 0;
            }
        }

        return length;
    }

    private static bool Close(Dictionary<(int, int), List<(int Cavity, Point2 Place)>> grid, Point2 p, int own, double cell, double reach)
    {
        // Half a step across leaves a place at most this much further off than the edge it stands for.
        double far = Math.Sqrt((reach * reach) + (Step * Step / 4));
        int x = (int)Math.Floor(p.X / cell), y = (int)Math.Floor(p.Y / cell);
        for (int i = x - 1; i <= x + 1; i++)
        {
            for (int j = y - 1; j <= y + 1; j++)
            {
                if (grid.TryGetValue((i, j), out List<(int Cavity, Point2 Place)>? near) && near.Exists(n => n.Cavity != own && (n.Place - p).Length <= far))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static (Point2[] Places, double Share) Walk(LayoutPart part, PlacedPanel placed)
    {
        Outline outline = part.Outline.Turned(double.DegreesToRadians(placed.AngleDeg)).Moved(new Point2(placed.XMm, placed.YMm));
        int count = (int)Math.Ceiling(outline.Perimeter / Step);
        double share = outline.Perimeter / count, left = share / 2;
        List<Point2> places = [];
        for (int i = 0; i < outline.Points.Count; i++)
        {
            Point2 a = outline.Points[i], way = outline.Points[(i + 1) % outline.Points.Count] - a;
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
