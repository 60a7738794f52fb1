using System.Globalization;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Csv;

/// <summary>One line of a table, read by the description of its columns; errors name file, line and column.</summary>
internal sealed class CsvRow(CsvTable table, int line, IReadOnlyList<string> values)
{
    /// <summary>An error about one column of this line.</summary>
    public InputException Fault(Field column, string problem) => new(table.File, $"line {line}, {column.Name}", problem);

    /// <summary>True where the column is there and filled.</summary>
    public bool Has(Field column) => Value(column).Length > 0;

    /// <summary>A text that is not blank.</summary>
    public string Text(TextField column) =>
        Value(column) is { Length: > 0 } text ? OneLine.Of(text) : throw Fault(column, "is blank: a value is wanted");

    /// <summary>A text, or null where it is blank or the column is missing.</summary>
    public string? OptionalText(TextField column) => Has(column) ? Text(column) : null;

    /// <summary>One of the words allowed; the usual one where it is blank or the column is missing and it has one.</summary>
    public string Word(WordField column)
    {
        string word = Value(column);
        if (word.Length == 0 && column.Default is { } usual)
        {
            return usual;
        }

        return column.Find(word)
            ?? throw Fault(
                column, $"'{OneLine.Of(word)}' is not allowed: {string.Join(", ", column.Words)}{NearestWord.Hint(word, column.Words)}");
    }

    /// <summary>One of the words allowed, or null where it is blank or the column is missing.</summary>
    public string? OptionalWord(WordField column) => Has(column) ? Word(column) : null;

    /// <summary>The name of a currency.</summary>
    public string Currency(CurrencyField column) => Text(column) is { } word && CurrencyWord.IsSound(word)
        ? word
        : throw Fault(column, $"'{Text(column)}' is not allowed: {CurrencyWord.Allowed}");

    /// <summary>A number within its range.</summary>
    public double Number(NumberField column) => (double)Money(column);

    /// <summary>A number within its range, or null where it is blank or the column is missing.</summary>
    public double? OptionalNumber(NumberField column) => Has(column) ? Number(column) : null;

    /// <summary>A whole number within its range; the usual one where it is blank or the column is missing and it has one.</summary>
    public int Whole(WholeField column)
    {
        if (column.Default is { } usual && !Has(column))
        {
            return (int)usual;
        }

        return Whole(column, column.Range.High);
    }

    /// <summary>A whole number up to an end that other documents set.</summary>
    public int Whole(WholeField column, double high)
    {
        decimal value = Money(column, (decimal)column.Range.Low, (decimal)high);
        return decimal.Truncate(value) == value
            ? (int)value
            : throw Fault(column, FormattableString.Invariant($"{value} is not a whole number {column.CountedWords}").TrimEnd());
    }

    /// <summary>A whole number within its range, or null where it is blank or the column is missing.</summary>
    public int? OptionalWhole(WholeField column) => Has(column) ? Whole(column) : null;

    /// <summary>A decimal number, no digit lost, within its range.</summary>
    public decimal Money(NumberField column) => Money(column, (decimal)column.Range.Low, (decimal)column.Range.High);

    /// <summary>A decimal number, no digit lost, within narrower ends than those of its range.</summary>
    public decimal Money(NumberField column, decimal low, decimal high)
    {
        string shown = OneLine.Of(Value(column));
        string text = table.Pointed(Value(column), line, column.Name);
        if (!decimal.TryParse(
            text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value))
        {
            string comma = table.Separator == ';' ? " or 12,5" : string.Empty;
            throw Fault(
                column,
                shown.Length == 0
                    ? "is blank: a number is wanted"
                    : $"'{shown}' is not a number: write 12.5{comma}, no unit and no blanks");
        }

        return value >= low && value <= high
            ? value
            : throw Fault(column, FormattableString.Invariant($"{shown} is outside {low} to {high} {column.UnitWord}").TrimEnd());
    }

    private string Value(Field column) => table.PlaceOf(column.Name) is { } at ? values[at] : string.Empty;
}
