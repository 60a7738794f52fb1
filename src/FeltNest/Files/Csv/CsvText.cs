using System.Globalization;
using System.Text;

namespace FeltNest.Files.Csv;

/// <summary>Writes a table as CSV: commas, decimal points, one line of names, fields in quotes where they need them, none that a
/// spreadsheet would run.</summary>
internal sealed class CsvText
{
    private readonly StringBuilder text = new();

    /// <summary>One line.</summary>
    public CsvText Line(params IEnumerable<string> fields)
    {
        text.AppendJoin(',', fields.Select(Quoted)).Append('\n');
        return this;
    }

    /// <summary>A number with all its digits; blank where there is none.</summary>
    public static string Number(double? value) =>
        value is { } number && double.IsFinite(number) ? (number + 0.0).ToString("R", CultureInfo.InvariantCulture) : string.Empty;

    /// <summary>Money to a millionth; blank where there is none.</summary>
    public static string Money(decimal? value) =>
        value is { } money ? Math.Round(money, 6).ToString("0.######", CultureInfo.InvariantCulture) : string.Empty;

    /// <summary>The file's bytes.</summary>
    public byte[] Finish() => Encoding.UTF8.GetBytes(text.ToString());

    // A semicolon is quoted too: where the list separator is one, a spreadsheet would part the cell there.
    private static string Quoted(string field)
    {
        string cell = CellText.Harmless(field);
        return cell.AsSpan().IndexOfAny(",;\"\n\r") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
