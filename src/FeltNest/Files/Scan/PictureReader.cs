using FeltNest.Panel.Trace;
using SkiaSharp;

namespace FeltNest.Files.Scan;

/// <summary>Reads a picture: PNG or JPEG.</summary>
internal static class PictureReader
{
    // Most pixels: A3 at 300 dpi has 17 million, A4 at 400 dpi 15 million.
    private const long MostPixels = 40_000_000;

    // A panel a few pixels across has no edge to trace.
    private const int LeastSide = 100;

    private static readonly string[] Endings = [".png", ".jpg", ".jpeg"];
    private static readonly string[] Others = [".pdf", ".tif", ".tiff", ".bmp", ".gif", ".webp", ".heic", ".heif", ".avif"];

    /// <summary>Whether a file's ending is that of a picture that is read.</summary>
    public static bool IsPicture(InputText text) => Endings.Contains(text.Ending);

    /// <summary>Refuses pictures of other kinds by their ending.</summary>
    /// <exception cref="InputException">It is one.</exception>
    public static void RefuseOthers(InputText text)
    {
        if (Others.Contains(text.Ending))
        {
            throw new InputException(
                text.Name, null, $"is a {text.Ending[1..].ToUpperInvariant()} file: of pictures PNG and JPEG are read");
        }
    }

    /// <summary>The picture.</summary>
    /// <exception cref="InputException">No picture, of another kind, too large, too small, or not whole.</exception>
    public static ColourPicture Read(InputText text)
    {
        using SKData data = SKData.CreateCopy(text.Bytes.Span);
        using SKCodec codec = SKCodec.Create(data)
            ?? throw new InputException(text.Name, null, "is no picture that can be read: a PNG or JPEG is wanted");
        if (codec.EncodedFormat is not (SKEncodedImageFormat.Png or SKEncodedImageFormat.Jpeg))
        {
            throw new InputException(
                text.Name, null, $"holds a {codec.EncodedFormat.ToString().ToUpperInvariant()} picture: a PNG or JPEG is wanted");
        }

        (int width, int height) = (codec.Info.Width, codec.Info.Height);
        if ((long)width * height > MostPixels || Math.Min(width, height) < LeastSide)
        {
            throw new InputException(
                text.Name, null,
                $"has {width} x {height} pixels: at least {LeastSide} each way and at most {MostPixels / 1_000_000} million in all are "
                    + $"read");
        }

        SKImageInfo wanted = new(width, height, SKColorType.Rgba8888, SKAlphaType.Unpremul);
        SKCodecResult result = codec.GetPixels(wanted, out byte[] pixels);
        return result == SKCodecResult.Success
            ? Picture(codec, pixels) with { StatedDpi = StatedResolution.Of(text.Bytes.Span) }
            : throw new InputException(text.Name, null, $"is not a whole picture ({OneLine.Of(result.ToString())})");
    }

    // Row by row from the bottom, on white where the picture is clear; turned over where a camera says that it was. Turns do not matter.
    private static ColourPicture Picture(SKCodec codec, byte[] pixels)
    {
        (int width, int height) = (codec.Info.Width, codec.Info.Height);
        bool over = codec.EncodedOrigin is SKEncodedOrigin.TopRight or SKEncodedOrigin.BottomLeft or SKEncodedOrigin.LeftTop
            or SKEncodedOrigin.RightBottom;
        byte[][] colours = [new byte[width * height], new byte[width * height], new byte[width * height]];
        for (int j = 0; j < height; j++)
        {
            for (int i = 0; i < width; i++)
            {
                int from = 4 * ((j * width) + i);
                int to = ((height - 1 - j) * width) + (over ? width - 1 - i : i);
                int alpha = pixels[from + 3];
                for (int k = 0; k < colours.Length; k++)
                {
                    colours[k][to] = (byte)(255 + ((pixels[from + k] - 255) * alpha / 255));
                }
            }
        }

        return new ColourPicture { Width = width, Height = height, Red = colours[0], Green = colours[1], Blue = colours[2] };
    }
}
