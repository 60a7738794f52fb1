using System.Globalization;

namespace FeltNest.Files.Csv;

/// <summary>One line of a table; errors name file, line and column.</summary>
internal sealed class CsvRow(CsvTable table, int line, IReadOnlyList<string> values)
{
    /// <summary>An error about one column of this line.</summary>
    public InputException Fault(string column, string problem) => new(table.File, $"line {line}, {column}", problem);

    /// <summary>True where the column is there and filled.</summary>
    public bool Has(string column) => Value(column).Length > 0;

    /// <summary>A text that is not blank.</summary>
    public string Text(string column) =>
        Value(column) is { Length: > 0 } text ? OneLine.Of(text) : throw Fault(column, "is blank: a value is wanted");

    /// <summary>A text, or null where it is blank or the column is missing.</summary>
    public string? OptionalText(string column) => Has(column) ? Text(column) : null;

    /// <summary>One of the words allowed.</summary>
    public string Word(string column, IReadOnlyList<string> allowed) => allowed.Contains(Value(column))
        ? Value(
            column) : throw Fault(
                column,
                $"'{OneLine.Of(Value(column))}' is not allowed: {string.Join(", ", allowed)}{NearestWord.Hint(Value(column), allowed)}");

    /// <summary>A number within its range.</summary>
    public double Number(string column, double low, double high, string unit) => (double)Money(column, (decimal)low, (decimal)high, unit);

    /// <summary>A number within its range, or null where it is blank or the column is missing.</summary>
    public double? OptionalNumber(string column, double low, double high, string unit) =>
        Has(column) ? Number(column, low, high, unit) : null;

    /// <summary>A decimal number, no digit lost, within its range.</summary>
    public decimal Money(string column, decimal low, decimal high, string unit)
    {
        string shown = OneLine.Of(Value(column));
        string text = table.Pointed(Value(column), line, column);
        if (!decimal.TryParse(
            text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value))
        {
            throw Fault(
                column,
                shown.Length == 0
                    ? "is blank: a number is wanted"
                    : $"'{shown}' is not a number: write 12.5{(table.Separator == ';' ? " or 12,5" : string.Empty)}, no unit and no "
                        + $"blanks");
        }

        return value >= low && value <= high
            ? value
            : throw Fault(column, FormattableString.Invariant($"{shown} is outside {low} to {high} {unit}").TrimEnd());
    }

    private string Value(string column) => table.PlaceOf(column) is { } at ? values[at] : string.Empty;
}
