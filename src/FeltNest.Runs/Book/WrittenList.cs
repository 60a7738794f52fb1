using FeltNest.Files;
using FeltNest.Files.Csv;

namespace FeltNest.Runs.Book;

/// <summary>A list of one line, from values typed at a desk: it is read as any list is.</summary>
internal static class WrittenList
{
    /// <summary>The list.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="cells">Columns and their values; null for a column that is left out.</param>
    public static InputText Of(string name, params (string Column, string? Value)[] cells)
    {
        (string Column, string? Value)[] given = [.. cells.Where(cell => cell.Value is not null)];
        CsvText text = new CsvText().Line(given.Select(cell => cell.Column)).Line(given.Select(cell => cell.Value!));
        return InputText.In(name, text.Finish(), string.Empty);
    }
}
