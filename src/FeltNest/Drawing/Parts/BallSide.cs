using FeltNest.Geometry;
using FeltNest.Seam;

namespace FeltNest.Drawing.Parts;

/// <summary>The side from which a ball is seen, in parallel projection.</summary>
internal sealed class BallSide
{
    private readonly SpherePoint toViewer;
    private readonly SpherePoint right;
    private readonly SpherePoint up;

    /// <summary>A side.</summary>
    /// <param name="toViewer">Direction to the viewer; need not have length 1.</param>
    /// <param name="right">Direction that points to the right, at right angles to it.</param>
    public BallSide(SpherePoint toViewer, SpherePoint right)
    {
        this.toViewer = 1 / toViewer.Length * toViewer;
        this.right = 1 / right.Length * right;
        up = this.toViewer.Cross(this.right);
    }

    /// <summary>How far a point lies to the right, up, and to the viewer: not below 0 on the near half.</summary>
    public (double Right, double Up, double Depth) Seen(SpherePoint p) => (p.Dot(right), p.Dot(up), p.Dot(toViewer));

    /// <summary>The stretches of a closed line on the sphere that lie on the near half, or on the far one, each up to the rim.</summary>
    /// <param name="round">Points of the line; the last is followed by the first.</param>
    /// <param name="near">Which half.</param>
    public IReadOnlyList<Point2[]> Lines(IReadOnlyList<SpherePoint> round, bool near)
    {
        (double Right, double Up, double Depth)[] seen = [.. round.Select(Seen)];
        bool Lies(int i) => seen[i % seen.Length].Depth >= 0 == near;
        int start = Enumerable.Range(0, seen.Length).FirstOrDefault(i => !Lies(i) && Lies(i + 1), -1);
        if (start < 0)
        {
            return Lies(0) ? [[.. seen.Append(seen[0]).Select(Flat)]] : [];
        }

        List<Point2[]> lines = [];
        List<Point2> line = [];
        for (int i = start; i < start + seen.Length; i++)
        {
            if (Lies(i))
            {
                line.Add(Flat(seen[i % seen.Length]));
            }

            if (Lies(i) != Lies(i + 1))
            {
                line.Add(OnRim(seen[i % seen.Length], seen[(i + 1) % seen.Length]));
            }

            if (Lies(i) && !Lies(i + 1))
            {
                lines.Add([.. line]);
                line.Clear();
            }
        }

        return lines;
    }

    /// <summary>Where the line between two points of a sphere, as seen, passes the rim, pushed out to it.</summary>
    public static Point2 OnRim((double Right, double Up, double Depth) one, (double Right, double Up, double Depth) other)
    {
        double share = one.Depth / (one.Depth - other.Depth);
        Point2 place = Flat(one) + ((Flat(other) - Flat(one)) * share);
        return place * (double.Hypot(Flat(one).Length, one.Depth) / place.Length);
    }

    private static Point2 Flat((double Right, double Up, double Depth) seen) => new(seen.Right, seen.Up);
}
