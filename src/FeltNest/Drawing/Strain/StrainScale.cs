namespace FeltNest.Drawing.Strain;

/// <summary>Colours of strain: bands of equal width on both sides of zero, blue where felt is pushed together, brown-orange where it is
/// stretched.</summary>
/// <remarks>Own scale: a straight line in OKLab on each side, so that equal steps of strain look equally far apart; the two sides part
/// along blue and yellow, which red-green colour-blind readers tell apart, and a step in colour marks zero.</remarks>
internal sealed class StrainScale
{
    // Lightness at zero and at the ends, chroma at the ends, the two hues in radians, and the share of the way to the end at which a side
    // begins.
    private const double Light = 0.965;
    private const double Dark = 0.5;
    private const double Chroma = 0.13;
    private const double StretchHue = 0.95;
    private const double PushHue = 4.45;
    private const double FirstStep = 0.1;

    // Most bands on one side: more cannot be told apart at a glance.
    private const int MostBands = 8;

    private static readonly double[] Steps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];

    private StrainScale(double step, int bands)
    {
        Step = step;
        Bands = bands;
    }

    /// <summary>Width of a band, per cent.</summary>
    public double Step { get; }

    /// <summary>Bands on each side of zero.</summary>
    public int Bands { get; }

    /// <summary>The finest scale that reaches <paramref name="greatest"/> per cent both ways.</summary>
    public static StrainScale Reaching(double greatest)
    {
        double step = Array.Find(Steps, s => s * MostBands >= greatest);
        step = step == 0 ? Steps[^1] : step;
        return new StrainScale(step, Math.Clamp((int)Math.Ceiling(greatest / step), 1, MostBands));
    }

    /// <summary>Colour of a band: 0 is the first above zero, -1 the first below.</summary>
    public Colour OfBand(int band)
    {
        int place = band >= 0 ? band : -band - 1;
        double share = FirstStep + ((1 - FirstStep) * place / Math.Max(1, Bands - 1));
        double hue = band >= 0 ? StretchHue : PushHue;
        double lightness = Light + ((Dark - Light) * share);
        double chroma = Chroma * share;
        return Colour.FromOkLab(lightness, chroma * Math.Cos(hue), chroma * Math.Sin(hue));
    }
}
