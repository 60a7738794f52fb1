namespace FeltNest.Files.Csv;

/// <summary>The lines of a list that are not blank, whatever kind of file they came from; the first holds the names of the
/// columns.</summary>
/// <param name="Separator">What stands between columns in the text; a tab for a workbook.</param>
/// <param name="Lines">The lines in order.</param>
internal sealed record ListLines(char Separator, IReadOnlyList<ListLine> Lines)
{
    // Most lines of data: far above any sound list.
    public const int MostRows = 10_000;

    /// <summary>The lines of a text or a workbook.</summary>
    /// <exception cref="InputException">No text and no workbook.</exception>
    public static ListLines Of(InputText text, Fields.Listing listing) =>
        WorkbookLines.Is(text) ? WorkbookLines.Read(text, listing.Name) : CsvLines.Read(text, listing);
}
