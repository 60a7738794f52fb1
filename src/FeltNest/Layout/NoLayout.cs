using System.Globalization;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Rows;

namespace FeltNest.Layout;

/// <summary>Why no lay that was tried can be used, and what would work.</summary>
internal static class NoLayout
{
    /// <summary>The reason.</summary>
    /// <param name="request">What was asked for.</param>
    /// <param name="tried">Lays that were tried, simplest rows among them.</param>
    public static Exception Why(LayoutRequest request, IEnumerable<LayCandidate> tried)
    {
        if (request.Second is not null)
        {
            return new NoAnswerException("the two parts do not fit side by side in this width: take a wider roll or one part alone");
        }

        if (request.Rules.Die is null)
        {
            return new InvalidOperationException("no layout passes its check");
        }

        if (request.Rules.LeastRepeatMm == 0)
        {
            return new NoAnswerException(
                $"no layout was found that a die of this size cuts in equal strikes ({DieWords(request.Rules.Die)}): allow a larger "
                    + $"bed, or another tilt");
        }

        // One panel of a row is always a die, so it is the least repeat that asks for more of them in a row than the die may hold.
        LayoutRepeat longest = tried.Select(lay => lay.Bands[0].Repeat).MaxBy(r => r.LengthMm)!;
        return new NoAnswerException(string.Create(
            CultureInfo.InvariantCulture,
            $"the limit on the die ({DieWords(request.Rules.Die)}) and the least repeat of {request.Rules.LeastRepeatMm:0.##} mm "
                + $"contradict each other: a die then holds at least {Math.Ceiling(request.Rules.LeastRepeatMm / longest.LengthMm):0} "
                + $"panels in a row; with this die a least repeat of up to {longest.LengthMm:0.##} mm works"));
    }

    private static string DieWords(DieLimit die) => string.Join(", ", new[]
    {
        die.MostPanels is { } panels ? $"at most {panels} panels" : null,
        die.BedLengthMm is { } length ? FormattableString.Invariant($"bed {length:0.##} x {die.BedWidthMm:0.##} mm") : null,
    }.OfType<string>());
}
