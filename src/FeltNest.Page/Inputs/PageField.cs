using System.Globalization;
using FeltNest.Ball.Ranges;

namespace FeltNest.Page.Inputs;

/// <summary>A number of the page: its name in the address, its usual value and what is allowed.</summary>
/// <param name="Name">Name in the address and of the field.</param>
/// <param name="Usual">Value where the address has none; null where the field may stay empty.</param>
/// <param name="Low">Least value allowed.</param>
/// <param name="High">Greatest value allowed.</param>
/// <param name="Unit">Its unit.</param>
internal sealed record PageField(string Name, double? Usual, double Low, double High, string Unit)
{
    /// <summary>A field that may stay empty, with the range of a ball's field.</summary>
    public static PageField Of(string name, FieldRange range) => new(name, null, range.Low, range.High, range.Unit);

    /// <summary>The value of a text, or null where it is empty or unsound; then says why in <paramref name="fault"/>.</summary>
    public double? Read(string? text, out string? fault)
    {
        fault = null;
        if (string.IsNullOrWhiteSpace(text))
        {
            fault = text is null || Usual is null ? null : $"is empty: {Allowed}";
            return text is null ? Usual : null;
        }

        const NumberStyles plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (text.Length > 40
            || !double.TryParse(text.Trim(), plain, CultureInfo.InvariantCulture, out double value)
            || !double.IsFinite(value))
        {
            fault = $"is not a number with a decimal point: {Allowed}";
            return null;
        }

        fault = value < Low || value > High ? string.Create(CultureInfo.InvariantCulture, $"{value:0.######} is outside {Allowed}") : null;
        return value;
    }

    private string Allowed => string.Create(CultureInfo.InvariantCulture, $"{Low:0.######} to {High:0.######} {Unit}").TrimEnd();
}
