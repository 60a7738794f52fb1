using FeltNest.Geometry;

namespace FeltNest.Panel.Trace;

/// <summary>Ink on a panel: a line along the warp, and a dot at the end of it to which the nap runs.</summary>
internal sealed record InkMarks
{
    // Ink has at most this share of the felt's lightness; the line is this long, mm, and this many times longer than wide; a dot is at
    // least this large, mm2, and at most this many times longer than wide. The rim of the panel casts shadows.
    private const double InkShare = 0.6;
    private const double LeastLength = 8;
    private const double LineRatio = 4;
    private const double LeastDot = 1;
    private const double DotRatio = 2;
    private const double RimMm = 2;

    /// <summary>One end of the line, pixels; with a dot the end away from it.</summary>
    public required Point2 From { get; init; }

    /// <summary>The other end.</summary>
    public required Point2 To { get; init; }

    /// <summary>Whether a dot tells the nap's direction.</summary>
    public required bool HasNap { get; init; }

    /// <summary>The marks on a panel; null where no single line is found.</summary>
    public static InkMarks? Of(FlatPicture flat, Contour panel)
    {
        GreyGrid grid = flat.Picture.Lightness().Softened(1);
        bool[] inside = Mask(panel, grid.Width, grid.Height, RimMm / flat.PixelMm);
        float[] felt = [.. grid.Values.Where((_, i) => inside[i])];
        if (felt.Length == 0)
        {
            return null;
        }

        Array.Sort(felt);
        float level = (float)InkShare * felt[felt.Length / 2];
        IReadOnlyList<Contour> lines =
            ContourTracer.Trace(grid.Width, grid.Height, i => inside[i] ? level - grid.Values[i] : -level) ?? [];
        Ink[] marks = [.. lines.Where(line => line.Area * flat.PixelMm * flat.PixelMm >= LeastDot).Select(Ink.Of)];
        Ink[] strokes = [.. marks.Where(mark => mark.Length * flat.PixelMm >= LeastLength && mark.Ratio >= LineRatio)];
        Ink[] dots = [.. marks.Where(mark => mark.Ratio <= DotRatio)];
        if (strokes.Length != 1)
        {
            return null;
        }

        Ink stroke = strokes[0];
        Point2 half = new Point2(Math.Cos(stroke.Angle), Math.Sin(stroke.Angle)) * (stroke.Length / 2);
        bool hasNap = dots.Length == 1;
        int way = hasNap && (dots[0].Middle - stroke.Middle).Dot(half) < 0 ? -1 : 1;
        return new InkMarks { From = stroke.Middle - (half * way), To = stroke.Middle + (half * way), HasNap = hasNap };
    }

    // Pixels inside a line and farther from it than a rim.
    private static bool[] Mask(Contour panel, int width, int height, double rim)
    {
        bool[] inside = new bool[width * height];
        int low = Math.Max(0, (int)panel.Places.Min(p => p.Y));
        int high = Math.Min(height - 1, (int)panel.Places.Max(p => p.Y));
        List<double>[] crossings = [.. Enumerable.Range(0, height).Select(_ => new List<double>())];
        for (int i = 0; i < panel.Places.Length; i++)
        {
            (Point2 a, Point2 b) = (panel.Places[i], panel.Places[(i + 1) % panel.Places.Length]);
            for (int j = (int)Math.Ceiling(Math.Min(a.Y, b.Y)); j <= Math.Max(a.Y, b.Y); j++)
            {
                if (a.Y > j != b.Y > j)
                {
                    crossings[j].Add(a.X + ((b.X - a.X) * (j - a.Y) / (b.Y - a.Y)));
                }
            }
        }

        for (int j = low; j <= high; j++)
        {
            crossings[j].Sort();
            for (int k = 0; k + 1 < crossings[j].Count; k += 2)
            {
                for (int i = (int)Math.Ceiling(crossings[j][k]); i <= crossings[j][k + 1]; i++)
                {
                    inside[(j * width) + i] = true;
                }
            }
        }

        foreach (Point2 place in panel.Places)
        {
            Clear(inside, width, height, place, rim);
        }

        return inside;
    }

    private static void Clear(bool[] inside, int width, int height, Point2 place, double rim)
    {
        for (int j = Math.Max(0, (int)(place.Y - rim)); j <= Math.Min(height - 1, place.Y + rim); j++)
        {
            double half = Math.Sqrt(Math.Max(0, (rim * rim) - ((j - place.Y) * (j - place.Y))));
            for (int i = Math.Max(0, (int)(place.X - half)); i <= Math.Min(width - 1, place.X + half); i++)
            {
                inside[(j * width) + i] = false;
            }
        }
    }

    // A spot of ink by its second moments: as long as the rectangle that has them.
    private readonly record struct Ink
    {
        public required Point2 Middle { get; init; }

        public required double Angle { get; init; }

        public required double Ratio { get; init; }

        public required double Length { get; init; }

        public static Ink Of(Contour line)
        {
            Point2 middle = line.Centroid;
            LongAxis axis = LongAxis.Of(line.Places, middle);
            double along =
                line.Places.Max(p => (p - middle).Turned(-axis.Angle).X) - line.Places.Min(p => (p - middle).Turned(-axis.Angle).X);
            return new Ink { Middle = middle, Angle = axis.Angle, Ratio = axis.Ratio, Length = along };
        }
    }
}
