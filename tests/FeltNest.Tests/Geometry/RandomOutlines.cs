using FeltNest.Geometry;

namespace FeltNest.Tests.Geometry;

/// <summary>Random outlines of every kind a cutting room or a careless drawing can bring: the same seed always gives the same
/// outline.</summary>
internal static class RandomOutlines
{
    internal const int Kinds = 7;

    /// <summary>An outline of a kind: 0 convex, 1 star-shaped, 2 spiky, 3 cells of a grid, 4 comb with nearly touching teeth, 5 smooth dog
    /// bone, 6 corners on a coarse grid. Now and then a random draw makes no simple outline; the next draw of the same random numbers is
    /// then taken.</summary>
    /// <param name="random">Source of the numbers.</param>
    /// <param name="kind">0 to 6.</param>
    /// <param name="mostPoints">Most corners, 3 to 400.</param>
    internal static Outline Next(Random random, int kind, int mostPoints)
    {
        while (true)
        {
            try
            {
                return kind switch
                {
                    0 => Star(random.Next(3, mostPoints + 1), _ => 1, random.NextDouble() + 0.2),
                    1 => Star(random.Next(3, mostPoints + 1), _ => 0.6 + (0.4 * random.NextDouble()), 1),
                    2 => Star(random.Next(5, mostPoints + 1), i => i % 2 == 0 ? 1 : 0.03 + (0.3 * random.NextDouble()), 1),
                    3 => Cells(random, random.Next(2, 14)),
                    4 => Comb(random, random.Next(2, Math.Max(3, mostPoints / 4))),
                    5 => Bone(random, random.Next(5, Math.Max(6, mostPoints / 4))),
                    _ => CoarseGrid(random, random.Next(3, 9)),
                };
            }
            catch (GeometryException)
            {
            }
        }
    }

    private static Outline Star(int corners, Func<int, double> radius, double flatness) =>
        Outline.From(
            Enumerable.Range(0, corners)
                .Select(i => new Point2(10 * radius(i), 0).Turned(2 * Math.PI * i / corners))
                .Select(p => new Point2(p.X, p.Y * flatness)));

    private static Outline Bone(Random random, int steps) =>
        Layout.Shapes.DogBone(1.5 + random.NextDouble(), 0.3 + (0.4 * random.NextDouble()), steps, 3);

    private static Outline CoarseGrid(Random random, int corners)
    {
        Point2[] points = [.. Enumerable.Range(0, corners).Select(_ => new Point2(random.Next(6), random.Next(6)))];
        Point2 middle = points.Aggregate((a, b) => a + b) * (1.0 / corners);
        return Outline.From(points.OrderBy(p => Math.Atan2(p.Y - middle.Y, p.X - middle.X)));
    }

    // Teeth up and slots between them, slots from a millionth to two wide.
    private static Outline Comb(Random random, int teeth)
    {
        List<Point2> top = [];
        double x = 0;
        double height = random.Next(2, 5);
        for (int i = 0; i < teeth; i++)
        {
            double tooth = random.Next(1, 3);
            double slot = random.Next(3) switch { 0 => 1e-6, 1 => 1, _ => 2 };
            top.AddRange([new(x, height), new(x + tooth, height)]);
            x += tooth;
            if (i + 1 < teeth)
            {
                top.AddRange([new(x, 1), new(x + slot, 1)]);
                x += slot;
            }
        }

        top.Reverse();
        return Outline.From([new Point2(0, 0), new Point2(x, 0), .. top]);
    }

    // The way round some unit cells that hang together.
    private static Outline Cells(Random random, int count)
    {
        List<(int X, int Y)> cells = [(0, 0)];
        while (cells.Count < count)
        {
            (int x, int y) = cells[random.Next(cells.Count)];
            (int X, int Y) next = random.Next(4) switch { 0 => (x + 1, y), 1 => (x - 1, y), 2 => (x, y + 1), _ => (x, y - 1) };
            if (!cells.Contains(next))
            {
                cells.Add(next);
            }
        }

        Dictionary<(int, int), (int, int)> sides = [];
        foreach ((int x, int y) in cells)
        {
            Side((x, y - 1), (x, y), (x + 1, y));
            Side((x + 1, y), (x + 1, y), (x + 1, y + 1));
            Side((x, y + 1), (x + 1, y + 1), (x, y + 1));
            Side((x - 1, y), (x, y + 1), (x, y));
        }

        (int X, int Y) start = cells.Min();
        (int X, int Y) at = start;
        List<Point2> ring = [];
        do
        {
            ring.Add(new Point2(at.X, at.Y));
            at = sides[at];
        }
        while (at != start && ring.Count < 200);
        return Outline.From(ring);

        void Side((int, int) beyond, (int, int) from, (int, int) to)
        {
            if (!cells.Contains(beyond))
            {
                sides[from] = to;
            }
        }
    }
}
