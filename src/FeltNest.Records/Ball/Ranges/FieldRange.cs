using System.Globalization;

namespace FeltNest.Ball.Ranges;

/// <summary>What one number of an input may be, and why.</summary>
internal sealed record FieldRange
{
    /// <summary>Path of the field, such as <c>core.outerDiameterMm</c>.</summary>
    public required string Field { get; init; }

    /// <summary>Least value allowed.</summary>
    public required double Low { get; init; }

    /// <summary>Greatest value allowed.</summary>
    public required double High { get; init; }

    /// <summary>Unit shown after the numbers; empty for a plain ratio.</summary>
    public required string Unit { get; init; }

    /// <summary>Why the range ends where it does, in one clause.</summary>
    public required string Reason { get; init; }

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
