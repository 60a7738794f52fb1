using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>Greatest stretch and greatest compression over a piece laid on.</summary>
internal static class WrapExtremes
{
    // Rings looked at between centroid and edge; between places looked at the extreme is found by a parabola.
    private const int Rings = 40;

    /// <summary>Both in per cent of flat length, 0 or more.</summary>
    public static (double Stretch, double Compression) Of(WrapRegion region, WrapField field, FeltLaw law, double[] x)
    {
        // A quarter of the piece where there are mirrors, which also say what lies beyond its ends; else what the half-turn leaves.
        int stations = field.HasMirrors ? (region.Edge.Length / 4) + 1 : region.Half;
        double[,] most = new double[stations, Rings + 1];
        double[,] least = new double[stations, Rings + 1];
        for (int i = 0; i < stations; i++)
        {
            for (int ring = 0; ring <= Rings; ring++)
            {
                (double uu, double uv, double vv) = field.Density(law, x, region.Edge[i] * ((double)ring / Rings)).Strain;
                double mean = (uu + vv) / 2;
                double apart = Math.Sqrt(((uu - vv) * (uu - vv) / 4) + (uv * uv));
                most[i, ring] = Math.Sqrt(1 + (2 * (mean + apart))) - 1;
                least[i, ring] = 1 - Math.Sqrt(Math.Max(0, 1 + (2 * (mean - apart))));
            }
        }

        return (100 * Greatest(most, field.HasMirrors), 100 * Greatest(least, field.HasMirrors));
    }

    private static double Greatest(double[,] values, bool mirrors)
    {
        int stations = values.GetLength(0);
        (int station, int ring) = (0, 0);
        for (int i = 0; i < stations; i++)
        {
            for (int k = 0; k <= Rings; k++)
            {
                (station, ring) = values[i, k] > values[station, ring] ? (i, k) : (station, ring);
            }
        }

        double here = values[station, ring];
        int before = mirrors ? Math.Abs(station - 1) : (station + stations - 1) % stations;
        int after = mirrors && station == stations - 1 ? station - 1 : (station + 1) % stations;
        double gain = Peak(values[before, ring], here, values[after, ring])
            + (ring is > 0 and < Rings ? Peak(values[station, ring - 1], here, values[station, ring + 1]) : 0);
        return Math.Max(0, here + gain);
    }

    // How far the parabola through three values at equal steps rises above the middle one, which is the greatest.
    private static double Peak(double before, double here, double after)
    {
        double bend = (2 * here) - before - after;
        return bend > 0 ? (after - before) * (after - before) / (8 * bend) : 0;
    }
}
