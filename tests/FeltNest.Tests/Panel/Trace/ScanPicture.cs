using FeltNest.Drawing;
using FeltNest.Geometry;
using SkiaSharp;

namespace FeltNest.Tests.Panel.Trace;

/// <summary>Pictures as a scanner or a camera would take them of panels whose outline is known.</summary>
internal sealed record ScanPicture
{
    /// <summary>Pixels across and up.</summary>
    public required (int Width, int Height) Size { get; init; }

    /// <summary>Where a place of the flat, mm, x to the right and y upwards, comes to lie, pixels from the lower left corner.</summary>
    public required Func<Point2, Point2> Image { get; init; }

    /// <summary>Half width of the blur, pixels.</summary>
    public double Blur { get; init; } = 1;

    /// <summary>Standard deviation of the noise, of 255.</summary>
    public double Noise { get; init; } = 8;

    /// <summary>Colour of the ground.</summary>
    public SKColor Ground { get; init; } = new(238, 236, 230);

    /// <summary>Colour of the felt: yellow, hardly darker than the ground but without its blue.</summary>
    public SKColor Felt { get; init; } = new(205, 220, 60);

    /// <summary>The picture of panels, with ink and other shapes over them in their own colours.</summary>
    public byte[] Of(
        IEnumerable<IReadOnlyList<Point2>> panels, IEnumerable<(IReadOnlyList<Point2> Ring, SKColor Colour)>? before = null,
        IEnumerable<(IReadOnlyList<Point2> Ring, SKColor Colour)>? after = null,
        SKEncodedImageFormat format = SKEncodedImageFormat.Png)
    {
        using SKBitmap sharp = new(new SKImageInfo(Size.Width, Size.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using SKCanvas canvas = new(sharp);
        canvas.Clear(Ground);
        foreach ((IReadOnlyList<Point2> ring, SKColor colour) in
            (before ?? []).Concat(panels.Select(panel => (panel, Felt))).Concat(after ?? []))
        {
            using SKPathBuilder path = new();
            SKPoint[] points = [.. ring.Select(Image).Select(p => new SKPoint((float)p.X, (float)(Size.Height - p.Y)))];
            path.MoveTo(points[0]);
            foreach (SKPoint point in points.Skip(1))
            {
                path.LineTo(point);
            }

            path.Close();
            using SKPaint paint = new() { IsAntialias = true, Color = colour };
            using SKPath built = path.Detach();
            canvas.DrawPath(built, paint);
        }

        using SKBitmap blurred = new(sharp.Info);
        using SKCanvas second = new(blurred);
        using SKImageFilter filter = SKImageFilter.CreateBlur((float)Blur, (float)Blur);
        using SKPaint soft = new() { ImageFilter = filter };
        second.DrawBitmap(sharp, 0, 0, SKSamplingOptions.Default, soft);
        Random random = new(5);
        blurred.Pixels = [.. blurred.Pixels.Select(p => new SKColor(Noisy(p.Red), Noisy(p.Green), Noisy(p.Blue)))];
        using SKData data = blurred.Encode(format, 95);
        return data.ToArray();

        byte Noisy(byte value) => (byte)Math.Clamp(
            Math.Round(value + (Noise * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()))),
            0, 255);
    }

    /// <summary>Places along an outline of arcs.</summary>
    public static IReadOnlyList<Point2> Ring(ArcOutline outline) => new Chain(outline.Vertices, true).Flattened(0.002);

    /// <summary>A disc.</summary>
    public static IReadOnlyList<Point2> Disc(Point2 middle, double radius) =>
        [.. Enumerable.Range(0, 180).Select(i => middle + (new Point2(Math.Cos(i * Math.PI / 90), Math.Sin(i * Math.PI / 90)) * radius))];
}
