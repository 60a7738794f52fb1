using System.Globalization;

namespace FeltNest.Files.Workbooks;

/// <summary>One cell of a workbook.</summary>
/// <param name="Content">What it holds.</param>
/// <param name="Words">Text, number or formula as it is written; a formula without its equals sign.</param>
/// <param name="Look">How it looks.</param>
internal sealed record WorkbookCell(CellContent Content, string Words, CellLook Look)
{
    // A program that reads text as if it were typed takes these for a formula.
    private const string FormulaSigns = "=+-@\t\r";

    /// <summary>Text, whatever it begins with.</summary>
    public static WorkbookCell Text(string words, CellLook look = CellLook.Plain)
    {
        bool quoted = words.Length > 0 && FormulaSigns.Contains(words[0], StringComparison.Ordinal);
        CellLook plain = look == CellLook.Input ? CellLook.QuotedInput : CellLook.Quoted;
        return new WorkbookCell(CellContent.Text, words, quoted ? plain : look);
    }

    /// <summary>A number that may be changed; an empty cell where it is not given.</summary>
    public static WorkbookCell Input(double? value) => value is { } number
        ? new WorkbookCell(CellContent.Number, number.ToString("R", CultureInfo.InvariantCulture), CellLook.Input)
        : new WorkbookCell(CellContent.Nothing, string.Empty, CellLook.Input);

    /// <summary>Money or a rate that may be changed; an empty cell where it is not given.</summary>
    public static WorkbookCell Input(decimal? value) => value is { } number
        ? new WorkbookCell(CellContent.Number, number.ToString(CultureInfo.InvariantCulture), CellLook.Input)
        : new WorkbookCell(CellContent.Nothing, string.Empty, CellLook.Input);

    /// <summary>Text that may be changed.</summary>
    public static WorkbookCell InputText(string words) => Text(words, CellLook.Input);

    /// <summary>A formula.</summary>
    public static WorkbookCell Formula(string words, CellLook look = CellLook.Plain) => new(CellContent.Formula, words, look);
}
