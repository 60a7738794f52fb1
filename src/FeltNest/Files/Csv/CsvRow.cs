using System.Globalization;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Csv;

/// <summary>One line of a table, read by the description of its columns; errors name file, line and column.</summary>
internal sealed class CsvRow(CsvTable table, int line, IReadOnlyList<string> values)
{
    // Below the greatest decimal.
    private const double MostDecimal = 7e28;

    // What a formula leaves in a cell when it fails.
    private static readonly HashSet<string> SheetErrors =
    [
        "#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A", WorkbookSheetPart.NeverWorkedOut,
    ];

    /// <summary>Its number in the file.</summary>
    public int Line => line;

    /// <summary>An error about one column of this line.</summary>
    public InputException Fault(Field column, string problem) => new(table.File, $"line {line}, {column.Name}", problem);

    /// <summary>Whether numbers that are asked about are meant.</summary>
    public bool Insisted => table.Lists?.Insisted == true;

    /// <summary>A question about one column of this line, such as a number that can hardly be: it is refused until it is said to be
    /// meant.</summary>
    public InputException Asked(Field column, string question, AskedFor meant = AskedFor.Insisted) =>
        new(table.File, $"line {line}, {column.Name}", question) { Mend = meant };

    /// <summary>An error about this line that makes all lines behind it too many.</summary>
    public InputException TooMany(Field column, string problem)
    {
        table.End();
        return Fault(column, problem);
    }

    /// <summary>True where the column is there and filled.</summary>
    public bool Has(Field column) => Value(column).Length > 0;

    /// <summary>A text that is not blank.</summary>
    public string Text(TextField column) =>
        Sound(column) is { Length: > 0 } text ? OneLine.Of(text) : throw Fault(column, "is blank: a value is wanted");

    /// <summary>A text, or null where it is blank or the column is missing.</summary>
    public string? OptionalText(TextField column) => Has(column) ? Text(column) : null;

    /// <summary>One of the words allowed; the usual one where it is blank or the column is missing and it has one.</summary>
    public string Word(WordField column)
    {
        string word = Sound(column);
        if (word.Length == 0 && column.Default is { } usual)
        {
            return usual;
        }

        return column.Find(word)
            ?? YesOrNo(column, word)
            ?? OnlyOne(column.Words.Where(one => one.Equals(word, StringComparison.OrdinalIgnoreCase)))
            ?? throw Fault(
                column, $"'{OneLine.Of(word)}' is not allowed: {string.Join(", ", column.Words)}{NearestWord.Hint(word, column.Words)}");
    }

    /// <summary>One of the words allowed, or null where it is blank or the column is missing.</summary>
    public string? OptionalWord(WordField column) => Has(column) ? Word(column) : null;

    /// <summary>A day.</summary>
    public DateOnly Day(DayField column)
    {
        string written = Text(column);
        return DayText.Of(DayText.YearFirst(written, table.Lists?.Days)) is { } day ? day : throw NoDay(column, written);
    }

    /// <summary>A day, or null where it is blank or the column is missing.</summary>
    public DateOnly? OptionalDay(DayField column) => Has(column) ? Day(column) : null;

    /// <summary>The text of a day or a moment, year first, as it is read further on.</summary>
    public string Moment(TextField column)
    {
        string written = Text(column);
        string moment = DayText.YearFirst(written, table.Lists?.Days);
        return table.Lists is not null && DayText.IsTurned(moment) ? throw NoDay(column, written) : moment;
    }

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
        decimal value = Money(column, End(column.Range.Low), End(high));
        return decimal.Truncate(value) == value
            ? (int)value
            : throw Fault(column, FormattableString.Invariant($"{value} is not a whole number {column.CountedWords}").TrimEnd());
    }

    /// <summary>A whole number within its range, or null where it is blank or the column is missing.</summary>
    public int? OptionalWhole(WholeField column) => Has(column) ? Whole(column) : null;

    /// <summary>A decimal number, no digit lost, within its range.</summary>
    public decimal Money(NumberField column) => Money(column, End(column.Range.Low), End(column.Range.High));

    /// <summary>A decimal number, no digit lost, within narrower ends than those of its range.</summary>
    public decimal Money(NumberField column, decimal low, decimal high)
    {
        string shown = OneLine.Of(Sound(column));
        string text = table.Pointed(Value(column), line, column.Name);
        if (!decimal.TryParse(
            text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value))
        {
            string comma = table.Separator != ',' ? " or 12,5" : string.Empty;
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

    /// <summary>What is wrong with the cells of this line, each looked at for itself.</summary>
    /// <param name="columns">Columns of the list.</param>
    public List<InputException> CellFaults(IReadOnlyList<Field> columns)
    {
        List<InputException> faults = [];
        IEnumerable<Field> there = columns.Where(one => table.Has(one) && (Has(one) || (one.IsRequired && !one.MayBeBlank)));
        foreach (Field column in there.OrderBy(one => table.PlaceOf(one.Name)))
        {
            try
            {
                Look(column);
            }
            catch (InputException fault)
            {
                faults.Add(fault);
            }
        }

        return faults;
    }

    private void Look(Field column)
    {
        object? _ = column switch
        {
            WholeField whole => Whole(whole),
            NumberField number => Money(number),
            WordField word => Word(word),
            CurrencyField currency => Currency(currency),
            DayField day => Day(day),
            TextField { OrBlank: false } text => Text(text),
            _ => null,
        };
    }

    private InputException NoDay(Field column, string written)
    {
        string problem = $"'{written}' is not a day: write it as 2026-03-31 (year-month-day)";
        return table.Lists is null || !DayText.IsTurned(written)
            ? Fault(column, problem)
            : new InputException(table.File, $"line {line}, {column.Name}", table.Lists.Days is null
                ? $"{problem}, or say whether the list writes the day first or the month"
                : $"{problem}; under the order of days that was said there is no such day")
            { Mend = AskedFor.ListDays };
    }

    // An end of a range, which may be none.
    private static decimal End(double end) => (decimal)Math.Clamp(end, -MostDecimal, MostDecimal);

    // What sheets hold for yes and no: words in any letters, 1 and 0.
    private static string? YesOrNo(WordField column, string word) => column.Words is ["yes", "no"]
        ? word.ToUpperInvariant() switch
        {
            "YES" or "Y" or "1" or "TRUE" => "yes",
            "NO" or "N" or "0" or "FALSE" => "no",
            _ => null,
        }
        : null;

    private static string? OnlyOne(IEnumerable<string> words) => words.ToArray() is [var word] ? word : null;

    private string Sound(Field column) => SheetErrors.Contains(Value(column))
        ? throw Fault(column, $"'{Value(column)}' is an error of the sheet: mend the formula there")
        : Value(column);

    private string Value(Field column) => table.PlaceOf(column.Name) is { } at ? values[at] : string.Empty;
}
