using System.CommandLine.Parsing;
using System.Globalization;
using FeltNest.Files;

namespace FeltNest.Cli.Options;

/// <summary>Lengths as they are typed: a bare number in mm, or a number with mm, cm, m or in. The decimal mark is the point, whatever the
/// shell's language.</summary>
internal static class LengthText
{
    /// <summary>Lengths that layouts take, in words.</summary>
    public static readonly string Allowed =
        FormattableString.Invariant($"{ShopRanges.Length.Low} mm to {ShopRanges.Length.High / 1000} m");

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

    /// <summary>Whether it is a length that layouts take, mm.</summary>
    public static bool IsSound(double length) => length >= ShopRanges.Length.Low && length <= ShopRanges.Length.High;

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

        if (!IsSound(length) && !(zeroAllowed && length == 0))
        {
            string allowed = zeroAllowed ? $"0, or {Allowed}" : Allowed;
            result.AddError(FormattableString.Invariant($"{option}: {length:R} mm is not allowed: {allowed}"));
        }

        return length;
    }
}
