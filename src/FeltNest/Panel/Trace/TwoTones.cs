namespace FeltNest.Panel.Trace;

/// <summary>A picture told apart in two tones, dark and light.</summary>
/// <remarks>The tones are parted where the variance between them is greatest (N. Otsu, <i>IEEE Transactions on Systems, Man and
/// Cybernetics</i> 9:62-66, 1979). Their middles and widths are then taken by rank, which dust and edges hardly move.</remarks>
internal sealed record TwoTones
{
    /// <summary>Value that parts them.</summary>
    public required double Parting { get; init; }

    /// <summary>Middle value of the dark tone.</summary>
    public required double Dark { get; init; }

    /// <summary>Middle value of the light tone.</summary>
    public required double Light { get; init; }

    /// <summary>Distance of the middles over the mean half width of the tones: 2 to 3 for a picture that has only one tone.</summary>
    public required double Apart { get; init; }

    /// <summary>How far the middles lie apart, of 255.</summary>
    public double Contrast => Light - Dark;

    /// <summary>The tones of a grid.</summary>
    public static TwoTones Of(GreyGrid grid)
    {
        const int levels = 256;
        long[] counts = new long[levels];
        foreach (float value in grid.Values)
        {
            counts[Math.Clamp((int)Math.Round(value), 0, levels - 1)]++;
        }

        int parting = Parted(counts);
        long[] dark = [.. counts[..(parting + 1)]];
        long[] light = [.. counts[(parting + 1)..]];
        double middleDark = Rank(dark, 0.5);
        double middleLight = parting + 1 + Rank(light, 0.5);

        // Ranks one half width below and above the middle of a normal curve; half a level is the least a tone is wide.
        const double low = 0.16;
        const double high = 0.84;
        double width = Math.Max(0.5, (Rank(dark, high) - Rank(dark, low) + Rank(light, high) - Rank(light, low)) / 4);
        return new TwoTones
        {
            Parting = parting + 0.5,
            Dark = middleDark,
            Light = middleLight,
            Apart = (middleLight - middleDark) / width,
        };
    }

    private static int Parted(long[] counts)
    {
        double all = counts.Sum();
        double moment = counts.Index().Sum(c => (double)c.Index * c.Item);
        double below = 0;
        double momentBelow = 0;
        double best = -1;
        int parting = 0;
        for (int i = 0; i < counts.Length - 1; i++)
        {
            below += counts[i];
            momentBelow += (double)i * counts[i];
            if (below > 0 && below < all)
            {
                double apart = (momentBelow / below) - ((moment - momentBelow) / (all - below));
                double between = below * (all - below) * apart * apart;
                (best, parting) = between > best ? (between, i) : (best, parting);
            }
        }

        return parting;
    }

    private static double Rank(long[] counts, double share)
    {
        double wanted = share * counts.Sum();
        double before = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            if (before + counts[i] >= wanted && counts[i] > 0)
            {
                return i - 0.5 + ((wanted - before) / counts[i]);
            }

            before += counts[i];
        }

        return 0;
    }
}
