using System.CommandLine.Parsing;
using System.Globalization;

namespace FeltNest.Cli.Options;

/// <summary>A range of plain numbers as it is typed: FROM:TO.</summary>
internal static class NumberRange
{
    /// <summary>Parser of an option that takes a range within <paramref name="low"/> to <paramref name="high"/>.</summary>
    /// <param name="low">Least number.</param>
    /// <param name="high">Greatest number.</param>
    /// <param name="unit">Unit, for messages.</param>
    /// <param name="example">A sound range, for messages.</param>
    public static Func<ArgumentResult, (double From, double To)?> Within(double low, double high, string unit, string example) => result =>
    {
        string text = result.Tokens[0].Value;
        string option = result.Parent is OptionResult parent ? parent.Option.Name : "range";
        double[] parts = [.. text.Split(':').Select(Number)];
        if (parts is [var from, var to] && from >= low && to <= high && from < to)
        {
            return (from, to);
        }

        result.AddError(
            FormattableString.Invariant($"{option}: '{text}' is not allowed: FROM:TO within {low} to {high} {unit}, such as {example}"));
        return null;
    };

    private static double Number(string text)
    {
        const NumberStyles plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        return double.TryParse(text, plain, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;
    }
}
