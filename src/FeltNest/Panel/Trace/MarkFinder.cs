using FeltNest.Geometry;

namespace FeltNest.Panel.Trace;

/// <summary>Finds the marks of the reference sheet in a picture.</summary>
internal static class MarkFinder
{
    // Areas of two circles of a mark against each other may be off by this share: print gain, blur and a slanting view.
    private const double Slack = 0.35;

    // Middles of the circles of a mark may lie apart by this share of its radius.
    private const double Centred = 0.2;

    // A mark smaller than this across, pixels, has no circles to tell.
    private const double LeastAcross = 16;

    /// <summary>The map from the sheet to the picture and how far the marks lie off it, mm rms; null where the picture does not show all
    /// six marks.</summary>
    public static (Homography Map, double RmsMm)? Find(GreyGrid grid)
    {
        TwoTones tones = TwoTones.Of(grid);
        float level = (float)((tones.Dark + tones.Light) / 2);
        float[] values = grid.Softened(0.7).Values;
        if (ContourTracer.Trace(grid.Width, grid.Height, i => level - values[i]) is not { } lines)
        {
            return null;
        }

        Point2[] found = [.. Middles(lines)];
        return found.Length == MarkSheet.Marks.Length ? Best(found) : null;
    }

    private static IEnumerable<Point2> Middles(IReadOnlyList<Contour> lines)
    {
        double least = LeastAcross * LeastAcross * Math.PI / 4;
        Contour[] dark = [.. lines.Where(line => line.Area > 0 && !line.IsAtBorder)];
        Contour[] holes = [.. lines.Where(line => line.Area < 0 && -line.Area > least / 4)];
        foreach (Contour hole in holes)
        {
            double radius = Math.Sqrt(-hole.Area / Math.PI);
            Point2 middle = hole.Centroid;
            bool Fits(Contour line, double wanted) =>
                Math.Abs((line.Area / -hole.Area / wanted) - 1) < Slack && (line.Centroid - middle).Length < Centred * radius;
            double[] squares = [.. MarkSheet.Radii.Select(r => r * r)];
            Contour? outer = Array.Find(dark, line => line.Area > least && Fits(line, squares[0] / squares[1]));
            Contour? inner = Array.Find(dark, line => Fits(line, squares[2] / squares[1]));
            if (outer is not null && inner is not null)
            {
                yield return Middle([outer, hole, inner], squares);
            }
        }
    }

    // The image of a circle's middle: the centroids of its images move off it with the square of the radius, so a straight line through the
    // three, by that square, is followed back to 0.
    private static Point2 Middle(Contour[] circles, double[] squares)
    {
        double mean = squares.Average();
        double spread = squares.Sum(s => (s - mean) * (s - mean));
        Point2[] centroids = [.. circles.Select(circle => circle.Centroid)];
        Point2 middle = default;
        for (int i = 0; i < squares.Length; i++)
        {
            middle += centroids[i] * ((1.0 / squares.Length) - (mean * (squares[i] - mean) / spread));
        }

        return middle;
    }

    // The marks are met in their order round the sheet, whichever comes first; turned by half a round they look the same.
    private static (Homography Map, double RmsMm)? Best(Point2[] found)
    {
        Point2 middle = new(found.Average(p => p.X), found.Average(p => p.Y));
        Point2[] round = [.. found.OrderBy(p => Math.Atan2(p.Y - middle.Y, p.X - middle.X))];
        int n = round.Length;
        (Homography Map, double RmsMm)? best = null;
        for (int shift = 0; shift < n / 2; shift++)
        {
            Point2[] images = [.. Enumerable.Range(0, n).Select(i => round[(i + shift) % n])];
            if (Homography.Between(MarkSheet.Marks, images) is { } map
                && Off(map, images) is var off
                && (best is null || off < best.Value.RmsMm))
            {
                best = (map, off);
            }
        }

        return best;
    }

    private static double Off(Homography map, Point2[] images)
    {
        double pixel = (images[0] - images[1]).Length / (MarkSheet.Marks[0] - MarkSheet.Marks[1]).Length;
        double square = MarkSheet.Marks.Zip(images, (mark, image) => (map.Image(mark) - image).Length).Average(off => off * off);
        return Math.Sqrt(square) / pixel;
    }
}
