using FeltNest.Drawing;

namespace FeltNest.Tests.Drawing;

/// <summary>sRGB to OKLab, written for the tests: the way back from what the product computes.</summary>
internal static class OkLab
{
    public static (double L, double A, double B) Of(double red, double green, double blue)
    {
        double l = Math.Cbrt((0.4122214708 * red) + (0.5363325363 * green) + (0.0514459929 * blue));
        double m = Math.Cbrt((0.2119034982 * red) + (0.6806995451 * green) + (0.1073969566 * blue));
        double s = Math.Cbrt((0.0883024619 * red) + (0.2817188376 * green) + (0.6299787005 * blue));
        return ((0.2104542553 * l) + (0.7936177850 * m) - (0.0040720468 * s),
            (1.9779984951 * l) - (2.4285922050 * m) + (0.4505937099 * s),
            (0.0259040371 * l) + (0.7827717662 * m) - (0.8086757660 * s));
    }

    public static (double L, double A, double B) Of(Colour colour) => Of(Linear(colour.Red), Linear(colour.Green), Linear(colour.Blue));

    /// <summary>The colour as somebody without medium- or long-wave cones sees it.</summary>
    /// <remarks>Matrices of G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, IEEE Trans. Vis. Comput. Graph. 15(6), 2009, severity 1
    /// (from memory; each row adds to 1).</remarks>
    public static (double L, double A, double B) Seen(Colour colour, bool deuteranope)
    {
        double[,] m = deuteranope
            ? new[,] { { 0.367322, 0.860646, -0.227968 }, { 0.280085, 0.672501, 0.047413 }, { -0.011820, 0.042940, 0.968881 } }
            : new[,] { { 0.152286, 1.052583, -0.204868 }, { 0.114503, 0.786281, 0.099216 }, { -0.003882, -0.048116, 1.051998 } };
        double r = Linear(colour.Red);
        double g = Linear(colour.Green);
        double b = Linear(colour.Blue);
        double Row(int i) => Math.Clamp((m[i, 0] * r) + (m[i, 1] * g) + (m[i, 2] * b), 0, 1);
        return Of(Row(0), Row(1), Row(2));
    }

    public static double Distance((double L, double A, double B) one, (double L, double A, double B) two) =>
        Math.Sqrt(Math.Pow(one.L - two.L, 2) + Math.Pow(one.A - two.A, 2) + Math.Pow(one.B - two.B, 2));

    private static double Linear(byte channel)
    {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }
}
