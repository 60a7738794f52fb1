using FeltNest.Geometry;

namespace FeltNest.Tests.Geometry;

/// <summary>Shapes that tile the plane by translation, with their vectors (own derivation, exact overlap of neighbours checked by
/// hand).</summary>
internal static class Tiles
{
    internal sealed record Tile(string Name, Outline Part, Point2 First, Point2 Second);

    internal static IReadOnlyList<Tile> All { get; } =
    [
        Make("plus", [1, 0, 2, 0, 2, 1, 3, 1, 3, 2, 2, 2, 2, 3, 1, 3, 1, 2, 0, 2, 0, 1, 1, 1], new(2, 1), new(-1, 2)),
        Make("L tromino", [0, 0, 2, 0, 2, 1, 1, 1, 1, 2, 0, 2], new(2, -1), new(1, 1)),
        Make("I-beam", [0, 0, 1, 0, 1, 1, 3, 1, 3, 0, 4, 0, 4, 3, 3, 3, 3, 2, 1, 2, 1, 3, 0, 3], new(4, 0), new(2, 2)),
        Make(
            "trapezoid dog bone", [-3, -1, -2, -1, -1, -.4, 1, -.4, 2, -1, 3, -1, 3, 1, 2, 1, 1, .4, -1, .4, -2, 1, -3, 1], new(6, 0),
            new(3, 1.4)),
        Make("bow-tie hexagon", [-2, -1, 0, -.5, 2, -1, 2, 1, 0, .5, -2, 1], new(4, 0), new(2, 1.5)),
        Make("chevron", [0, 0, 2, 1, 4, 0, 4, 2, 2, 3, 0, 2], new(4, 0), new(0, 2)),
    ];

    internal static Tile Named(string name) => All.Single(t => t.Name == name);

    /// <summary>The cosine dog bone |x| &lt;= 3, |y| &lt;= 0.7 - 0.3 cos(pi x/3), as its chord polygon with <paramref name="steps"/> equal
    /// steps.</summary>
    internal static Outline CosineDogBone(int steps, double scale)
    {
        List<Point2> lower = [];
        List<Point2> upper = [];
        for (int i = 0; i <= steps; i++)
        {
            double x = -3 + (6.0 * i / steps);
            double y = 0.7 - (0.3 * Math.Cos(Math.PI * x / 3));
            lower.Add(new Point2(x, -y) * scale);
            upper.Add(new Point2(x, y) * scale);
        }

        upper.Reverse();
        return Outline.From([.. lower, .. upper]);
    }

    private static Tile Make(string name, double[] xy, Point2 first, Point2 second) =>
        new(name, Outline.From(xy.Chunk(2).Select(p => new Point2(p[0], p[1]))), first, second);
}
