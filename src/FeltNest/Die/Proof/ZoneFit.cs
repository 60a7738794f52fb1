using FeltNest.Geometry;
using FeltNest.Numerics;

namespace FeltNest.Die.Proof;

/// <summary>Lays points on an outline so that the zone which holds them all is narrowest: the greatest distance is made least.</summary>
/// <remarks>ISO 1101: a profile without a datum leaves its zone free to turn and to move, never to grow. Around a pose each distance
/// changes by the move along its normal and by the turn, so the best small step is a linear program of three moves and the half width of
/// the zone (the best approximation of Chebyshev). Feet are sought anew after each step, and a step that does not help is tried again
/// half as long.</remarks>
internal static class ZoneFit
{
    // A move that narrows the zone by less than this, mm, does not help.
    private const double Settled = 1e-11;

    // Steps of one fit, and the shortest step, mm, that is tried.
    private const int MostSteps = 200;
    private const double ShortestStep = 1e-8;

    // A pull so weak on each move that the zone is wider by far less than a thousandth of a micrometre, but no two vertices tie.
    private const double Pull = 1e-11;

    /// <summary>The pose of the narrowest zone near a first pose, and the points that hold it.</summary>
    public static (RigidMove Pose, IReadOnlyList<ZonePoint> HeldBy) Settle(
        OutlineFeet feet, IReadOnlyList<Point2> points, RigidMove first)
    {
        RigidMove pose = first;
        (double half, List<ZoneRow> rows) = Around(feet, points, pose);
        double reach = Math.Max(0.1, 2 * half);
        for (int step = 0; step < MostSteps && reach > ShortestStep; step++)
        {
            Point2 pivot = Middle(rows);
            double size = Math.Max(1e-6, rows.Max(r => (r.Place - pivot).Length));
            if (Program(rows, pivot, size, reach) is not { } program)
            {
                break;
            }

            double[] way = program.Change;
            RigidMove next = pose.Then(way[2] / size, pivot, new Point2(way[0], way[1]));
            (double nextHalf, List<ZoneRow> nextRows) = Around(feet, points, next);
            if (nextHalf > half - Settled)
            {
                reach /= 4;
                continue;
            }

            (pose, half, rows) = (next, nextHalf, nextRows);
            reach *= 2;
        }

        return (pose, Holding(rows));
    }

    /// <summary>The points that hold the zone of a pose, with their shares.</summary>
    private static ZonePoint[] Holding(List<ZoneRow> rows)
    {
        Point2 pivot = Middle(rows);
        double size = Math.Max(1e-6, rows.Max(r => (r.Place - pivot).Length));
        if (Program(rows, pivot, size, 1e-3) is not { } program)
        {
            return [];
        }

        return
        [
            .. program.Held.Where(limit => limit.Price > 1e-9).Select(limit => (Row: rows[limit.Limit / 2], limit.Price)).Select(limit =>
                new ZonePoint
                {
                    Place = limit.Row.Place,
                    OffMm = limit.Row.Signed,
                    Normal = limit.Row.Normal,
                    Share = limit.Price,
                }),
        ];
    }

    private static (double Half, List<ZoneRow> Rows) Around(OutlineFeet feet, IReadOnlyList<Point2> points, RigidMove pose)
    {
        List<ZoneRow> rows = new(points.Count);
        double half = 0;
        foreach (Point2 p in points)
        {
            Point2 at = pose.Apply(p);
            (double signed, Point2 normal, _) = feet.Foot(at);
            rows.Add(new ZoneRow(at, signed, normal));
            half = Math.Max(half, Math.Abs(signed));
        }

        return (half, rows);
    }

    private static Point2 Middle(List<ZoneRow> rows) =>
        rows.Aggregate(default(Point2), (sum, row) => sum + row.Place) * (1.0 / rows.Count);

    // The least half width e with -e <= signed + normal . (shift + turn x arm) <= e; the turn is counted in mm at the farthest point.
    private static VertexProgram? Program(List<ZoneRow> rows, Point2 pivot, double size, double reach)
    {
        List<(double[] Factors, double Bound)> limits = new(2 * rows.Count);
        foreach (ZoneRow row in rows)
        {
            double[] factors = [row.Normal.X, row.Normal.Y, row.Normal.Dot((row.Place - pivot).Left) / size];
            limits.Add((factors, -row.Signed));
            limits.Add(([.. factors.Select(f => -f)], row.Signed));
        }

        double[] most = [reach, reach, reach];
        return VertexProgram.Vertex([Pull, Pull, Pull], limits, [.. most.Select(m => -m)], most, 1);
    }

    private sealed record ZoneRow(Point2 Place, double Signed, Point2 Normal);
}
