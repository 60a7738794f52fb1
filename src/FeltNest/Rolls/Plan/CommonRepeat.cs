using FeltNest.Layout;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Plan;

/// <summary>The repeat that all bands of a layout have together, so that one strike cuts the whole width.</summary>
internal static class CommonRepeat
{
    // Lengths this near are one, mm: over ten thousand strikes bands drift apart by a hundredth of a millimetre.
    private const double Slack = 1e-6;

    // Most repeats of a band in the common one: more make no die.
    private const int Most = 100;

    /// <summary>The repeat of the whole width: of one band its own; of several the shortest that is a whole number of each one's.</summary>
    /// <exception cref="InputException">There is none; the message says why and what would work.</exception>
    public static LayoutRepeat Of(RollLayout layout)
    {
        IReadOnlyList<LayoutRepeat> repeats = [.. layout.Bands.Select(band => band.Repeat)];
        if (repeats.Count == 1)
        {
            return repeats[0];
        }

        double longest = repeats.Max(r => r.LengthMm);
        for (int times = 1; times <= Most; times++)
        {
            double length = times * longest;
            int[] counts = [.. repeats.Select(r => (int)Math.Round(length / r.LengthMm))];
            if (counts.Zip(repeats).All(b => b.First <= Most && Math.Abs((b.First * b.Second.LengthMm) - length) <= Slack))
            {
                return new LayoutRepeat(
                    length,
                    [
                        ..
                        from band in counts.Zip(repeats)
                        from k in Enumerable.Range(0, band.First)
                        from panel in band.Second.Panels
                        select panel with { XMm = panel.XMm + (k * band.Second.LengthMm) },
                    ]);
            }
        }

        throw new InputException(
            null, "bands",
            $"{repeats.Count} bands have repeats of {string.Join(" and ", repeats.Select(r => Invariant($"{r.LengthMm:0.####}")))} mm: no "
                + $"whole numbers of them up to {Most} are one length, so no one die cuts the whole width strike by strike. Plan each band "
                + $"by itself with a die of its own, or lay the panels out with one repeat");
    }
}
