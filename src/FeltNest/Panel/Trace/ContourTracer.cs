using FeltNest.Geometry;

namespace FeltNest.Panel.Trace;

/// <summary>Lines of one level through a picture, at places between its pixels.</summary>
/// <remarks>Marching squares (the plane case of W. E. Lorensen, H. E. Cline, <i>Computer Graphics</i> 21(4):163-169, 1987): in each square
/// of four pixels the line runs between the sides on which the level is crossed, its crossings taken straight between two pixels. A square
/// whose opposite corners agree is parted by the mean of the four.</remarks>
internal sealed class ContourTracer
{
    // More crossings than this are no edges but grain.
    private const int MostCrossings = 4_000_000;

    // Steps of each square's case, as pairs of sides from and to: 0 below, 1 right, 2 above, 3 left; the area lies to the left. Bits of a
    // case: lower left, lower right, upper right, upper left. Cases 5 and 10 are parted; the second rows hold where the middle is inside.
    private static readonly int[][] Steps =
    [
        [], [0, 3], [1, 0], [1, 3], [2, 1], [0, 3, 2, 1], [2, 0], [2, 3], [3, 2], [0, 2], [1, 0, 3, 2], [1, 2], [3, 1], [0, 1], [3, 0], [],
    ];

    private static readonly int[] FiveJoined = [0, 1, 2, 3];
    private static readonly int[] TenJoined = [3, 0, 1, 2];

    private readonly int width;
    private readonly int height;
    private readonly Func<int, float> level;
    private readonly Dictionary<int, int> next = [];
    private readonly List<int> order = [];

    private ContourTracer(int width, int height, Func<int, float> level)
    {
        this.width = width;
        this.height = height;
        this.level = level;
    }

    /// <summary>The lines at which a function of the pixel's number crosses from below 0 to above; pixels at the border count as
    /// below.</summary>
    /// <returns>Null where the picture is nothing but grain.</returns>
    public static IReadOnlyList<Contour>? Trace(int width, int height, Func<int, float> level) =>
        new ContourTracer(width, height, level).Trace();

    private List<Contour>? Trace()
    {
        for (int j = 0; j + 1 < height; j++)
        {
            for (int i = 0; i + 1 < width; i++)
            {
                Square(i, j);
            }

            if (next.Count > MostCrossings)
            {
                return null;
            }
        }

        List<Contour> found = [];
        HashSet<int> seen = [];
        foreach (int start in order)
        {
            if (seen.Contains(start))
            {
                continue;
            }

            List<Point2> places = [];
            for (int at = start; seen.Add(at); at = next[at])
            {
                places.Add(Crossing(at));
            }

            found.Add(Closed(places));
        }

        return found;
    }

    private void Square(int i, int j)
    {
        float a = Value(i, j);
        float b = Value(i + 1, j);
        float c = Value(i + 1, j + 1);
        float d = Value(i, j + 1);
        int kind = (a > 0 ? 1 : 0) | (b > 0 ? 2 : 0) | (c > 0 ? 4 : 0) | (d > 0 ? 8 : 0);
        int[] steps = Steps[kind];
        if (kind is 5 or 10 && a + b + c + d > 0)
        {
            steps = kind == 5 ? FiveJoined : TenJoined;
        }

        for (int k = 0; k < steps.Length; k += 2)
        {
            int from = Side(i, j, steps[k]);
            next[from] = Side(i, j, steps[k + 1]);
            order.Add(from);
        }
    }

    // Number of a square's side: twice that of its first pixel, one more for a side that runs upwards.
    private int Side(int i, int j, int side) => side switch
    {
        0 => 2 * ((j * width) + i),
        1 => (2 * ((j * width) + i + 1)) + 1,
        2 => 2 * (((j + 1) * width) + i),
        _ => (2 * ((j * width) + i)) + 1,
    };

    private Point2 Crossing(int side)
    {
        (int j, int i) = Math.DivRem(side / 2, width);
        bool up = side % 2 == 1;
        double first = Value(i, j);
        double second = up ? Value(i, j + 1) : Value(i + 1, j);
        double share = first / (first - second);
        return up ? new Point2(i, j + share) : new Point2(i + share, j);
    }

    private float Value(int i, int j) =>
        i == 0 || j == 0 || i == width - 1 || j == height - 1 ? -1 : level((j * width) + i);

    private Contour Closed(List<Point2> places)
    {
        double area = 0;
        bool border = false;
        for (int k = 0; k < places.Count; k++)
        {
            (Point2 a, Point2 b) = (places[k], places[(k + 1) % places.Count]);
            area += (a - places[0]).Cross(b - places[0]) / 2;
            border |= a.X < 1.01 || a.Y < 1.01 || a.X > width - 2.01 || a.Y > height - 2.01;
        }

        return new Contour { Places = [.. places], Area = area, IsAtBorder = border };
    }
}
