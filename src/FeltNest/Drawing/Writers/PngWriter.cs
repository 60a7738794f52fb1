using FeltNest.Drawing.Lettering;
using FeltNest.Geometry;
using SkiaSharp;

namespace FeltNest.Drawing.Writers;

/// <summary>Writes a sheet as PNG, its resolution stated so that it prints true to size.</summary>
internal static class PngWriter
{
    // Dots per inch of a sheet of common size, and the most pixels a picture may have before the resolution is lowered for it.
    private const double UsualDpi = 150;
    private const double MostPixels = 12e6;
    private const double MillimetresPerInch = 25.4;

    // Arcs are drawn as chords this near to them, mm: a fifth of a pixel.
    private const double ChordTolerance = 0.03;

    /// <summary>The file's bytes.</summary>
    public static byte[] Write(Sheet sheet)
    {
        double dpi = Resolution(sheet);
        double scale = dpi / MillimetresPerInch;
        SKImageInfo size = new(
            (int)Math.Round(sheet.WidthMm * scale), (int)Math.Round(sheet.HeightMm * scale), SKColorType.Rgb888x, SKAlphaType.Opaque);
        using SKSurface surface = SKSurface.Create(size) ?? throw new InvalidOperationException("no memory for the picture");
        SKCanvas canvas = surface.Canvas;
        canvas.Clear(SKColors.White);
        canvas.Scale((float)scale);
        using Brush brush = new(canvas);
        foreach (Mark mark in sheet.Marks)
        {
            Draw(brush, mark, sheet.HeightMm);
        }

        using SKPixmap pixels = surface.PeekPixels() ?? throw new InvalidOperationException("the picture has no pixels to read");
        // Flat colours pack well with the plainest filter and the lightest packing; the rest only costs time.
        using SKData data = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.Sub, 3))
            ?? throw new InvalidOperationException("the picture could not be packed");
        return PngResolution.Stated(data.AsSpan(), dpi);
    }

    /// <summary>Dots per inch of a sheet's picture.</summary>
    public static double Resolution(Sheet sheet)
    {
        double squareInches = sheet.WidthMm * sheet.HeightMm / (MillimetresPerInch * MillimetresPerInch);
        return Math.Min(UsualDpi, Math.Sqrt(MostPixels / squareInches));
    }

    private static void Draw(Brush brush, Mark mark, double top)
    {
        switch (mark)
        {
            case PathMark path:
                brush.Paint(path, top);
                break;
            case TextMark { Text.Length: > 0 } text:
                brush.Paint(new PathMark(StrokeFont.Strokes(text), StrokeFont.PenOf(text.HeightMm, text.Colour)), top);
                break;
            case PictureMark picture:
                Paint(brush.Canvas, picture, top);
                break;
            case CopyMark copy:
                brush.Canvas.Save();
                brush.Canvas.Translate((float)copy.At.X, (float)(top - copy.At.Y));
                brush.Canvas.RotateDegrees((float)-copy.AngleDeg);
                foreach (Mark inner in copy.Symbol.Marks)
                {
                    Draw(brush, inner, 0);
                }

                brush.Canvas.Restore();
                break;
            case GroupMark group:
                DrawGroup(brush, group, top);
                break;
        }
    }

    private static void DrawGroup(Brush brush, GroupMark group, double top)
    {
        brush.Canvas.Save();
        if (group.Clip is { } box)
        {
            brush.Canvas.ClipRect(
                new SKRect((float)box.MinX, (float)(top - box.MaxY), (float)box.MaxX, (float)(top - box.MinY)),
                SKClipOperation.Intersect, true);
        }

        foreach (Mark inner in group.Marks)
        {
            Draw(brush, inner, top);
        }

        brush.Canvas.Restore();
    }

    private static void Paint(SKCanvas canvas, PictureMark mark, double top)
    {
        using SKBitmap bitmap = PicturePacker.Bitmap(mark.Picture);
        using SKImage image = SKImage.FromBitmap(bitmap);
        SKRect at = new((float)mark.At.MinX, (float)(top - mark.At.MaxY), (float)mark.At.MaxX, (float)(top - mark.At.MinY));
        canvas.DrawImage(image, at, new SKSamplingOptions(SKFilterMode.Linear));
    }

    // Canvas and the paths already built: a symbol drawn a hundred times is built once.
    private sealed class Brush(SKCanvas canvas) : IDisposable
    {
        private readonly Dictionary<PathMark, SKPath> built = new(ReferenceEqualityComparer.Instance);

        public SKCanvas Canvas => canvas;

        public void Paint(PathMark mark, double top)
        {
            if (!built.TryGetValue(mark, out SKPath? path))
            {
                path = Build(mark, top);
                built.Add(mark, path);
            }

            using SKPaint paint = new() { IsAntialias = true };
            if (mark.Fill is { } fill)
            {
                paint.Color = new SKColor(fill.Red, fill.Green, fill.Blue);
                canvas.DrawPath(path, paint);
            }

            if (mark.Pen is { } pen)
            {
                using SKPathEffect? dashes =
                    pen.Dashes.Length > 0 ? SKPathEffect.CreateDash(Array.ConvertAll(pen.Dashes, d => (float)d), 0) : null;
                paint.IsStroke = true;
                paint.StrokeWidth = (float)pen.WidthMm;
                paint.StrokeCap = dashes is null ? SKStrokeCap.Round : SKStrokeCap.Butt;
                paint.StrokeJoin = SKStrokeJoin.Round;
                paint.PathEffect = dashes;
                paint.Color = new SKColor(pen.Colour.Red, pen.Colour.Green, pen.Colour.Blue);
                canvas.DrawPath(path, paint);
            }
        }

        public void Dispose()
        {
            foreach (SKPath path in built.Values)
            {
                path.Dispose();
            }
        }

        private static SKPath Build(PathMark mark, double top)
        {
            using SKPathBuilder builder = new() { FillType = SKPathFillType.EvenOdd };
            foreach (Chain chain in mark.Chains)
            {
                IReadOnlyList<Point2> points = chain.Flattened(ChordTolerance);
                builder.MoveTo((float)points[0].X, (float)(top - points[0].Y));
                for (int i = 1; i < points.Count; i++)
                {
                    builder.LineTo((float)points[i].X, (float)(top - points[i].Y));
                }

                if (chain.Closed)
                {
                    builder.Close();
                }
            }

            return builder.Detach();
        }
    }
}
