using System.CommandLine.Parsing;
using System.Globalization;
using FeltNest.Design.SeamDesign;

namespace FeltNest.Cli.Options;

/// <summary>Limits of stretch as they are typed: FROM:TO:STEP in per cent, or one number.</summary>
internal static class StretchLimits
{
    // Greatest limit taken, per cent, and what steps may miss the end by through rounding.
    private const double Most = 100;
    private const double Slack = 1e-9;

    /// <summary>Limits taken when none are given, per cent.</summary>
    public static IReadOnlyList<double> Usual { get; } = (double[])[6, 7, 8, 9, 10, 11, 12];

    /// <summary>Parser of the option.</summary>
    public static IReadOnlyList<double> Parse(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        double[] parts = [.. text.Split(':').Select(part =>
            double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : double.NaN)];
        if (parts is [var one] && one is > 0 and <= Most)
        {
            return [one];
        }

        double steps = parts.Length == 3 ? ((parts[1] - parts[0]) / parts[2]) + Slack : double.NaN;
        if (steps is >= 0 and < SeamFrontStudy.MostLimits && parts[0] > 0 && parts[1] <= Most)
        {
            return [.. Enumerable.Range(0, (int)steps + 1).Select(i => Math.Round(parts[0] + (i * parts[2]), 9))];
        }

        result.AddError(
            $"--stretch-limits: '{text}' is not allowed: FROM:TO:STEP in per cent, at most {SeamFrontStudy.MostLimits}, such as 6:12:1, "
                + $"or one number");
        return [];
    }
}
