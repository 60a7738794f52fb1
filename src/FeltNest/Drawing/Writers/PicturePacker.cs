using FeltNest.Panel.Trace;
using SkiaSharp;

namespace FeltNest.Drawing.Writers;

/// <summary>Makes a picture ready for a sheet: no larger than a sheet can show.</summary>
internal static class PicturePacker
{
    // Most pixels along the longer side: more is not seen on a sheet of A4.
    private const int MostSide = 1200;

    /// <summary>The picture, thinned to every n-th pixel's mean where it is larger.</summary>
    public static SKBitmap Bitmap(ColourPicture picture)
    {
        int step = Math.Max(1, (int)Math.Ceiling(Math.Max(picture.Width, picture.Height) / (double)MostSide));
        int width = picture.Width / step;
        int height = picture.Height / step;
        SKBitmap bitmap = new(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        SKColor[] pixels = new SKColor[width * height];
        for (int j = 0; j < height; j++)
        {
            for (int i = 0; i < width; i++)
            {
                // The sheet's rows run downwards.
                int from = ((height - 1 - j) * step * picture.Width) + (i * step);
                pixels[(j * width) + i] = new SKColor(
                    Mean(picture.Red, from, step, picture.Width), Mean(picture.Green, from, step, picture.Width),
                    Mean(picture.Blue, from, step, picture.Width));
            }
        }

        bitmap.Pixels = pixels;
        return bitmap;
    }

    /// <summary>The picture as PNG.</summary>
    public static byte[] Png(ColourPicture picture)
    {
        using SKBitmap bitmap = Bitmap(picture);
        using SKPixmap pixels = bitmap.PeekPixels() ?? throw new InvalidOperationException("the picture has no pixels to read");
        using SKData data = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.Sub, 6))
            ?? throw new InvalidOperationException("the picture could not be packed");
        return data.ToArray();
    }

    private static byte Mean(byte[] colour, int from, int step, int width)
    {
        int sum = 0;
        for (int j = 0; j < step; j++)
        {
            for (int i = 0; i < step; i++)
            {
                sum += colour[from + (j * width) + i];
            }
        }

        return (byte)(sum / (step * step));
    }
}
