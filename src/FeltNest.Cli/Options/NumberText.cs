using System.CommandLine.Parsing;
using System.Globalization;
using FeltNest.Ball.Ranges;

namespace FeltNest.Cli.Options;

/// <summary>Plain numbers as they are typed, with their range.</summary>
internal static class NumberText
{
    /// <summary>Parser of an option that takes a number from <paramref name="low"/> to <paramref name="high"/>.</summary>
    public static Func<ArgumentResult, double> Within(double low, double high, string unit) => result =>
    {
        string text = result.Tokens[0].Value;
        string option = result.Parent is OptionResult parent ? parent.Option.Name : "number";
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) || !(value >= low && value <= high))
        {
            result.AddError(FormattableString.Invariant($"{option}: '{text}' is not allowed: {low} to {high} {unit}"));
        }

        return value;
    };

    /// <summary>Parser of an option that takes a number of a range that documents keep too.</summary>
    public static Func<ArgumentResult, double> Within(FieldRange range) => Within(range.Low, range.High, range.Unit);

    /// <summary>Parser of an option that takes a whole number from <paramref name="low"/> to <paramref name="high"/>.</summary>
    public static Func<ArgumentResult, int> WholeWithin(int low, int high) => result =>
    {
        string text = result.Tokens[0].Value;
        string option = result.Parent is OptionResult parent ? parent.Option.Name : "number";
        if (!int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value) || value < low || value > high)
        {
            result.AddError($"{option}: '{text}' is not allowed: a whole number from {low} to {high}");
        }

        return value;
    };
}
