using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;

namespace FeltNest.Layout.Free;

/// <summary>How deep a part stands in another one's no-fit region, gap included, for every place: sampled from the exact region on a square
/// grid and read between samples.</summary>
/// <remarks>The signed distance to a boundary changes by no more than the way gone, so the reading is off by less than a grid step; what
/// the free search ends with is polished on exact distances.</remarks>
internal sealed class DepthField
{
    // Samples over the longer side of the region.
    private const int Samples = 140;

    // Rings of more sides than this are simplified, by this share of their size.
    private const int FewSides = 60;
    private const double Plainness = 1e-3;

    private readonly double minX;
    private readonly double minY;
    private readonly double step;
    private readonly int columns;
    private readonly int rows;
    private readonly float[] depths;

    private DepthField(double minX, double minY, double step, int columns, int rows, float[] depths)
    {
        (this.minX, this.minY, this.step, this.columns, this.rows, this.depths) = (minX, minY, step, columns, rows, depths);
        (MinX, MaxX, MinY, MaxY) = (minX, minX + ((columns - 1) * step), minY, minY + ((rows - 1) * step));
    }

    /// <summary>Outside these sides the depth is 0.</summary>
    internal double MinX { get; }

    internal double MaxX { get; }

    internal double MinY { get; }

    internal double MaxY { get; }

    /// <summary>The field of <paramref name="moving"/> against <paramref name="standing"/>.</summary>
    internal static DepthField Of(Outline standing, Outline moving, double gap)
    {
        Point2[][] rings = [.. NoFitRegion.Of(standing, moving).Rings.Select(Plain)];
        Point2[] all = [.. rings.SelectMany(r => r)];
        double left = all.Min(p => p.X) - gap;
        double right = all.Max(p => p.X) + gap;
        double low = all.Min(p => p.Y) - gap;
        double high = all.Max(p => p.Y) + gap;
        double step = Math.Max(right - left, high - low) / Samples;
        int columns = 2 + (int)Math.Ceiling((right - left) / step);
        int rows = 2 + (int)Math.Ceiling((high - low) / step);
        float[] depths = new float[columns * rows];
        for (int r = 0; r < rows; r++)
        {
            for (int c = 0; c < columns; c++)
            {
                depths[(r * columns) + c] = (float)(Inside(rings, new Point2(left + (c * step), low + (r * step))) + gap);
            }
        }

        return new DepthField(left, low, step, columns, rows, depths);
    }

    /// <summary>Depth at a place of the moving part's origin from the standing one's, mm; 0 where the gap is kept.</summary>
    internal double At(double x, double y)
    {
        double placeX = (x - minX) / step;
        double placeY = (y - minY) / step;
        if (placeX <= 0 || placeY <= 0 || placeX >= columns - 1 || placeY >= rows - 1)
        {
            return 0;
        }

        int c = (int)placeX;
        int r = (int)placeY;
        int at = (r * columns) + c;
        double shareX = placeX - c;
        double shareY = placeY - r;
        double lower = depths[at] + ((depths[at + 1] - depths[at]) * shareX);
        double upper = depths[at + columns] + ((depths[at + columns + 1] - depths[at + columns]) * shareX);
        return Math.Max(0, lower + ((upper - lower) * shareY));
    }

    // Simplified far below the sampling step: many short sides only cost time.
    private static Point2[] Plain(Point2[] ring)
    {
        double size = Math.Max(ring.Max(p => p.X) - ring.Min(p => p.X), ring.Max(p => p.Y) - ring.Min(p => p.Y));
        return ring.Length <= FewSides ? ring : [.. PolygonSets.Simplified(ring, size * Plainness)];
    }

    // Distance to the nearest side, positive inside the region.
    private static double Inside(Point2[][] rings, Point2 p)
    {
        double nearest = double.PositiveInfinity;
        bool inside = false;
        foreach (Point2[] ring in rings)
        {
            for (int i = 0, k = ring.Length - 1; i < ring.Length; k = i++)
            {
                Point2 a = ring[k];
                Point2 b = ring[i];
                double alongX = b.X - a.X;
                double alongY = b.Y - a.Y;
                double toX = p.X - a.X;
                double toY = p.Y - a.Y;
                double share =
                    Math.Clamp(((toX * alongX) + (toY * alongY)) / Math.Max(double.Epsilon, (alongX * alongX) + (alongY * alongY)), 0, 1);
                double offX = toX - (share * alongX);
                double offY = toY - (share * alongY);
                nearest = Math.Min(nearest, (offX * offX) + (offY * offY));
                if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + ((p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
                {
                    inside = !inside;
                }
            }
        }

        return inside ? Math.Sqrt(nearest) : -Math.Sqrt(nearest);
    }
}
