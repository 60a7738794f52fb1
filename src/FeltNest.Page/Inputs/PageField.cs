using System.Globalization;
using System.Text.Json.Serialization;
using FeltNest.Ball.Ranges;

namespace FeltNest.Page.Inputs;

/// <summary>A number of the page: its name in the address, its usual value and what is allowed.</summary>
/// <param name="Name">Name in the address and of the field.</param>
/// <param name="Usual">Value where the address has none; null where the field may stay empty.</param>
/// <param name="Range">What is allowed: the range of the quantity in every document.</param>
/// <param name="Unit">Its unit.</param>
internal sealed record PageField(string Name, double? Usual, [property: JsonIgnore] FieldRange Range, string Unit)
{
    /// <summary>A field with the range and the unit of a quantity.</summary>
    public PageField(string name, double? usual, FieldRange range)
        : this(name, usual, range, range.Unit)
    {
    }

    /// <summary>A field of the page alone.</summary>
    public PageField(string name, double? usual, double low, double high, string unit)
        : this(name, usual, new FieldRange { Field = name, Low = low, High = high, Unit = unit, Reason = string.Empty })
    {
    }

    /// <summary>Least value allowed.</summary>
    public double Low => Range.Low;

    /// <summary>Greatest value allowed.</summary>
    public double High => Range.High;

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
