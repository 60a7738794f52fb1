using System.CommandLine.Parsing;
using System.Globalization;

namespace FeltNest.Cli.Options;

/// <summary>Lengths as they are typed: a bare number in mm, or a number with mm, cm, m or in. The decimal mark is the point, whatever the
/// shell's language.</summary>
internal static class LengthText
{
    // Sound lengths, mm: 0.1 mm to 100 m.
    private const double Least = 0.1;
    private const double Greatest = 100_000;

    private static readonly (string Unit, double Millimetres)[] Units = [("mm", 1), ("cm", 10), ("in", 25.4), ("m", 1000)];

    /// <summary>Parser of an option that takes a length above zero.</summary>
    public static double Positive(ArgumentResult result) => Parse(result, zeroAllowed: false);

    /// <summary>Parser of an option that takes a length or zero.</summary>
    public static double OrZero(ArgumentResult result) => Parse(result, zeroAllowed: true);

    /// <summary>The length of a text in mm, or null when it is none.</summary>
    public static double? Read(string text)
    {
        string number = text.Trim();
        double factor = 1;
        foreach ((string unit, double millimetres) in Units)
        {
            if (number.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
            {
                number = number[..^unit.Length].TrimEnd();
                factor = millimetres;
                break;
            }
        }

        const NumberStyles plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(number, plain, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value * factor
            : null;
    }

    private static double Parse(ArgumentResult result, bool zeroAllowed)
    {
        string text = result.Tokens[0].Value;
        string option = result.Parent is OptionResult parent ? parent.Option.Name : "length";
        if (Read(text) is not { } length)
        {
            string comma = text.Contains(',') ? "; the decimal mark is the point" : string.Empty;
            result.AddError($"{option}: '{text}' is not a length: write 1370, 1370mm, 137cm, 1.37m or 54in{comma}");
            return 0;
        }

        if ((length < Least || length > Greatest) && !(zeroAllowed && length == 0))
        {
            string allowed = zeroAllowed ? "0, or 0.1 mm to 100 m" : "0.1 mm to 100 m";
            result.AddError(FormattableString.Invariant($"{option}: {length:R} mm is not allowed: {allowed}"));
        }

        return length;
    }
}
