namespace FeltNest.Drawing;

/// <summary>An opaque colour in sRGB.</summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
internal readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>The colour as #rrggbb.</summary>
    public string Hex => $"#{Red:x2}{Green:x2}{Blue:x2}";

    /// <summary>The colour of a number 0xRRGGBB.</summary>
    public static Colour Of(int rgb) => new((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);

    /// <summary>The colour with the OKLab coordinates given, each channel cut at the ends of sRGB.</summary>
    /// <remarks>Follows B. Ottosson, <i>A perceptual color space for image processing</i>, 2020 (matrices from memory; the tests hold
    /// white, black and the three primaries).</remarks>
    public static Colour FromOkLab(double lightness, double a, double b)
    {
        double l = Cube(lightness + (0.3963377774 * a) + (0.2158037573 * b));
        double m = Cube(lightness - (0.1055613458 * a) - (0.0638541728 * b));
        double s = Cube(lightness - (0.0894841775 * a) - (1.2914855480 * b));
        return new Colour(
            Channel((4.0767416621 * l) - (3.3077115913 * m) + (0.2309699292 * s)),
            Channel((-1.2684380046 * l) + (2.6097574011 * m) - (0.3413193965 * s)),
            Channel((-0.0041960863 * l) - (0.7034186147 * m) + (1.7076147010 * s)));
    }

    private static double Cube(double value) => value * value * value;

    private static byte Channel(double linear)
    {
        double value = linear <= 0.0031308 ? 12.92 * linear : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055;
        return (byte)Math.Round(255 * Math.Clamp(value, 0, 1));
    }
}
