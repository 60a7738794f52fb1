using System.Globalization;
using FeltNest.Geometry;

namespace FeltNest.Panel.Trace;

/// <summary>A picture true to scale, seen straight from above.</summary>
internal sealed record FlatPicture
{
    private const double MillimetresPerInch = 25.4;

    // A sheet whose marks lie off one flat picture by more than this, mm rms, is bent, or the lens bends lines.
    private const double MostOffMm = 0.5;

    /// <summary>The picture.</summary>
    public required ColourPicture Picture { get; init; }

    /// <summary>Width of a pixel, mm.</summary>
    public required double PixelMm { get; init; }

    /// <summary>How far the reference marks lie off one flat sheet, mm rms; null for a flatbed scan.</summary>
    public double? MarksOffMm { get; init; }

    /// <summary>From a flatbed scan.</summary>
    public static FlatPicture OfScan(ColourPicture picture, double dpi) => new() { Picture = picture, PixelMm = MillimetresPerInch / dpi };

    /// <summary>From a picture of the sheet of reference marks; null where its six marks are not found.</summary>
    /// <exception cref="InputException">The sheet is not flat.</exception>
    public static FlatPicture? OfSheet(ColourPicture picture)
    {
        if (MarkFinder.Find(picture.Lightness()) is not var (map, off))
        {
            return null;
        }

        if (off > MostOffMm)
        {
            throw new InputException(string.Create(
                CultureInfo.InvariantCulture,
                $"the reference marks lie {off:0.00} mm off one flat sheet: up to {MostOffMm} mm is taken; lay the sheet flat, use no "
                    + $"wide lens"));
        }

        // As many pixels as the picture itself has on the sheet, along its finer direction.
        Point2 room = MarkSheet.Room;
        double across = (map.Image(new Point2(room.X, 0)) - map.Image(new Point2(-room.X, 0))).Length / (2 * room.X);
        double up = (map.Image(new Point2(0, room.Y)) - map.Image(new Point2(0, -room.Y))).Length / (2 * room.Y);
        double pixel = 1 / Math.Max(across, up);
        (int width, int height) = ((int)(2 * room.X / pixel), (int)(2 * room.Y / pixel));
        Point2[] places =
        [
            .. Enumerable.Range(0, width * height)
                .Select(i => map.Image(new Point2(((i % width) + 0.5) * pixel, ((i / width) + 0.5) * pixel) - room)),
        ];
        return new FlatPicture
        {
            Picture = new ColourPicture
            {
                Width = width,
                Height = height,
                Red = Seen(picture.Colour(picture.Red), places),
                Green = Seen(picture.Colour(picture.Green), places),
                Blue = Seen(picture.Colour(picture.Blue), places),
            },
            PixelMm = pixel,
            MarksOffMm = off,
        };
    }

    private static byte[] Seen(GreyGrid grid, Point2[] places) => Array.ConvertAll(places, place => (byte)Math.Round(grid.At(place)));
}
