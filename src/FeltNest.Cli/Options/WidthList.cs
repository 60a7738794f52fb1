using System.CommandLine.Parsing;
using FeltNest.Files;

namespace FeltNest.Cli.Options;

/// <summary>Roll widths as they are typed: A,B,C or FROM:TO:STEP, each a length.</summary>
internal static class WidthList
{
    // Most widths of a list, each searched by all ways, and of a range, which is scanned from one set of tables.
    private const int MostListed = 60;
    private const int MostScanned = 1000;

    /// <summary>Parser of a list.</summary>
    public static IReadOnlyList<double>? List(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        double?[] widths = [.. text.Split(',').Select(LengthText.Read)];
        if (widths.Length is 0 or > MostListed
            || Array.Exists(widths, w => w is not { } width || !LengthText.IsSound(width))
            || widths.Distinct().Count() < widths.Length)
        {
            result.AddError(
                $"--widths: '{text}' is not allowed: 1 to {MostListed} different lengths with commas between, such as 1370,54in,1.5m; "
                    + $"the decimal mark is the point");
            return null;
        }

        return [.. widths.Select(w => w!.Value)];
    }

    /// <summary>Parser of a range.</summary>
    public static IReadOnlyList<double>? Range(ArgumentResult result)
    {
        // Steps that miss the end by rounding alone still reach it.
        const double slack = 1e-9;
        string text = result.Tokens[0].Value;
        double?[] parts = [.. text.Split(':').Select(LengthText.Read)];
        if (parts is [{ } from, { } to, > 0 and { } step]
            && from >= ShopRanges.Length.Low
            && to <= ShopRanges.Length.High
            && to >= from
            && ((to - from) / step) + slack < MostScanned)
        {
            return [.. Enumerable.Range(0, (int)(((to - from) / step) + slack) + 1).Select(i => Math.Round(from + (i * step), 9))];
        }

        result.AddError(
            $"--width-range: '{text}' is not allowed: FROM:TO:STEP from the narrow end to the wide one in at most {MostScanned} steps, "
                + $"such as 1300:1600:5");
        return null;
    }
}
