using System.Globalization;

namespace FeltNest.Panel.Trace;

/// <summary>Finds cut panels on a ground of another colour.</summary>
internal static class PanelFinder
{
    // Half width of the softening, pixels: takes the grain off an edge that is itself a pixel or two wide.
    private const double Soft = 1;

    // Panel and ground lie at least this far apart: in half widths of the two tones (a picture of one tone has 2 to 3), and of 255.
    private const double LeastApart = 4;
    private const double LeastContrast = 20;

    // Things as small as this, mm2, are dust; panels are at least half as large as the largest thing found, and as large as this.
    private const double Dust = 2;
    private const double LeastPanel = 200;
    private const double PanelShare = 0.5;

    // A thing whose holes take more than this share of it is a frame.
    private const double FrameShare = 0.5;

    /// <summary>The panels of a picture.</summary>
    /// <exception cref="InputException">Panel and ground cannot be told apart, or no whole panel lies in the picture.</exception>
    public static FoundPanels Find(FlatPicture flat)
    {
        (string seen, GreyGrid grid, TwoTones tones) = Clearest(flat.Picture);
        if (tones.Apart < LeastApart || tones.Contrast < LeastContrast)
        {
            throw new InputException(string.Create(
                CultureInfo.InvariantCulture,
                $"panel and ground cannot be told apart: they differ by {tones.Contrast:0} of 255 at best (in {seen}), "
                    + $"{tones.Apart:0.0} times ")
                + FormattableString.Invariant(
                    $"their own grain; {LeastContrast} and {LeastApart} times are needed: lay the panel on a ground of another colour"));
        }

        float level = (float)((tones.Dark + tones.Light) / 2);
        float side = IsGroundLight(grid, level) ? -1 : 1;
        float[] values = grid.Softened(Soft).Values;
        IReadOnlyList<Contour> lines = ContourTracer.Trace(grid.Width, grid.Height, i => side * (values[i] - level))
            ?? throw new InputException("panel and ground cannot be told apart: the picture is all grain");
        return Panels(flat, seen, tones.Contrast, lines);
    }

    private static FoundPanels Panels(FlatPicture flat, string seen, double contrast, IReadOnlyList<Contour> lines)
    {
        double pixel = flat.PixelMm * flat.PixelMm;
        Contour[] things = [.. lines.Where(line => line.Area * pixel > Dust).OrderByDescending(line => line.Area)];
        Contour[] holes = [.. lines.Where(line => -line.Area * pixel > LeastPanel)];
        Contour[] whole =
        [
            .. things.Where(line => !line.IsAtBorder && line.Area * pixel >= LeastPanel && !IsFrame(line, holes)),
        ];
        if (whole.Length == 0)
        {
            bool cut = things.Any(line => line.IsAtBorder && line.Area * pixel >= LeastPanel);
            throw new InputException(
                cut ? "holds no whole panel: what is seen runs over the picture's border"
                    : $"holds no panel: nothing of {LeastPanel} mm2 or more stands out of the ground; is the resolution right?");
        }

        Contour[] panels = [.. whole.Where(line => line.Area >= PanelShare * whole[0].Area)];
        return new FoundPanels
        {
            Seen = seen,
            Contrast = contrast,
            Panels = panels,
            LeftAside = things.Length - panels.Length,
        };
    }

    private static bool IsFrame(Contour line, Contour[] holes)
    {
        double open = holes.Where(hole => -hole.Area < line.Area && line.Holds(hole.Places[0])).Sum(hole => -hole.Area);
        return open > FrameShare * line.Area;
    }

    private static (string Seen, GreyGrid Grid, TwoTones Tones) Clearest(ColourPicture picture)
    {
        (string Seen, GreyGrid Grid)[] all =
        [
            ("lightness", picture.Lightness()), ("red", picture.Colour(picture.Red)), ("green", picture.Colour(picture.Green)),
            ("blue", picture.Colour(picture.Blue)),
        ];
        return all.Select(one => (one.Seen, one.Grid, TwoTones.Of(one.Grid)))
            .MaxBy(one => one.Item3.Contrast < LeastContrast ? 0 : one.Item3.Apart);
    }

    // The ground is what most of the picture's border shows.
    private static bool IsGroundLight(GreyGrid grid, float level)
    {
        int light = 0;
        int dark = 0;
        for (int i = 0; i < grid.Values.Length; i++)
        {
            (int j, int at) = Math.DivRem(i, grid.Width);
            int rim = Math.Max(2, grid.Width / 50);
            if (at < rim || j < rim || at >= grid.Width - rim || j >= grid.Height - rim)
            {
                (light, dark) = grid.Values[i] > level ? (light + 1, dark) : (light, dark + 1);
            }
        }

        return light >= dark;
    }
}
