using System.Globalization;

namespace FeltNest.Ball.Ranges;

/// <summary>What one number of an input may be, and why.</summary>
/// <param name="Field">Path of the field, such as <c>core.outerDiameterMm</c>.</param>
/// <param name="Low">Least value allowed.</param>
/// <param name="High">Greatest value allowed.</param>
/// <param name="Unit">Unit shown after the numbers; empty for a plain ratio.</param>
/// <param name="Reason">Why the range ends where it does, in one clause.</param>
public sealed record FieldRange(string Field, double Low, double High, string Unit, string Reason)
{
    /// <summary>The value itself when it lies in the range.</summary>
    /// <exception cref="InputException">The value is not a number or lies outside.</exception>
    public double Checked(double value)
    {
        if (value >= Low && value <= High)
        {
            return value;
        }

        string unit = Unit.Length == 0 ? string.Empty : " " + Unit;
        throw new InputException(null, Field, string.Create(
            CultureInfo.InvariantCulture, $"{value:R}{unit} is outside {Low:R} to {High:R}{unit}: {Reason}"));
    }
}
