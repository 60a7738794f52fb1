namespace FeltNest.Ball.Passport;

/// <summary>The edge limit from discs pressed on cores.</summary>
/// <remarks>A disc of radius a without friction and with a free edge is pressed together along its edge by a2/8R2; own derivation from the
/// least energy of a shallow cap.</remarks>
internal static class EdgeBracket
{
    // Discs of one size differ by their thickness alone: strains this near count as one.
    private const double Alike = 0.99;

    /// <summary>The bracket.</summary>
    /// <param name="discs">The discs, one or more.</param>
    /// <param name="neutralLayer">Where the neutral layer lies.</param>
    /// <exception cref="NoAnswerException">No disc lay flat below those that puckered.</exception>
    public static FeltEdge Of(IReadOnlyList<DiscReading> discs, double neutralLayer)
    {
        (DiscReading Disc, double Percent)[] all = [.. discs.Select(disc => (disc, disc.EdgePercent(neutralLayer)))];
        (DiscReading Disc, double Percent)[] flat = [.. all.Where(one => !one.Disc.Puckered)];
        (DiscReading Disc, double Percent)[] puckered = [.. all.Where(one => one.Disc.Puckered)];
        double least = puckered.Length == 0 ? double.PositiveInfinity : puckered.Min(one => one.Percent);
        (DiscReading Disc, double Percent)[] below = [.. flat.Where(one => one.Percent < least)];
        if (below.Length == 0)
        {
            throw new NoAnswerException("no disc lay flat that is smaller than all that puckered: press smaller discs");
        }

        (DiscReading Disc, double Percent) good = below.MaxBy(one => one.Percent);
        double greatest = flat.Max(one => one.Percent);
        (DiscReading Disc, double Percent)[] beyond = [.. puckered.Where(one => one.Percent > greatest)];
        (DiscReading Disc, double Percent)? bad = beyond.Length == 0 ? null : beyond.MinBy(one => one.Percent);
        return new FeltEdge
        {
            Flat = good.Disc,
            Puckered = bad?.Disc,
            FlatPercent = good.Percent,
            PuckeredPercent = bad?.Percent,
            FlatDiscs = below.Count(one => one.Percent >= Alike * good.Percent),
            Contradict = greatest > least,
        };
    }
}
