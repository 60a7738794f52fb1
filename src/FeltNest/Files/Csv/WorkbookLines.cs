using System.Text;
using ExcelDataReader;

namespace FeltNest.Files.Csv;

/// <summary>Reads the lines of a list from a sheet of a workbook (.xlsx): days, times and numbers by their types.</summary>
internal static class WorkbookLines
{
    // Most columns that are looked at.
    private const int MostColumns = 256;

    private const string Ending = ".xlsx";

    // The reader asks for Windows-1252 by its number when it starts, for workbooks of the old kind: it has to be there.
    static WorkbookLines() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>Whether a text is a workbook, by what it begins with or by its name.</summary>
    public static bool Is(InputText text) => text.Bytes.Span is [0x50, 0x4B, 3, 4, ..] or [0xD0, 0xCF, 0x11, 0xE0, ..]
        || text.Ending is Ending or ".xls" or ".xlsm" or ".xlsb" or ".ods";

    /// <summary>The lines of the sheet that is asked for, or of the first one that is shown.</summary>
    /// <param name="text">The workbook.</param>
    /// <param name="list">Name of the list.</param>
    /// <exception cref="InputException">Another kind of workbook, damaged, too large, or without the sheet.</exception>
    public static ListLines Read(InputText text, string list)
    {
        if (text.Bytes.Span is [0xD0, 0xCF, 0x11, 0xE0, ..])
        {
            throw new InputException(text.Name, null, "is an old workbook (.xls), or one with a password: save it as .xlsx without one");
        }

        try
        {
            using MemoryStream parts = WorkbookParts.Of(text);
            using IExcelDataReader reader = ExcelReaderFactory.CreateOpenXmlReader(parts);
            Find(reader, text, list);
            return new ListLines('\t', [.. Lines(reader)]);
        }
        catch (Exception error) when (error is not (InputException or OutOfMemoryException))
        {
            throw new InputException(
                text.Name, null, $"is no sound workbook ({OneLine.Of(error.Message)}): save it as .xlsx again, or as CSV UTF-8", error);
        }
    }

    // Stops at the sheet that is read.
    private static void Find(IExcelDataReader reader, InputText text, string list)
    {
        List<string> sheets = [];
        int? at = null;
        string? wanted = text.Lists?.SheetOf(list);
        do
        {
            bool taken = wanted is null ? reader.VisibleState == "visible" : reader.Name == wanted;
            at ??= taken ? sheets.Count : null;
            sheets.Add(reader.Name);
        }
        while (reader.NextResult());

        string names = string.Join(", ", sheets.Select(sheet => $"'{OneLine.Of(sheet)}'"));
        if (at is null)
        {
            string problem = wanted is null ? "shows no sheet" : $"has no sheet '{OneLine.Of(wanted)}'";
            throw new InputException(text.Name, null, $"{problem}: it has {names}") { Mend = AskedFor.ListSheet };
        }

        if (wanted is null && sheets.Count > 1)
        {
            text.Lists?.Note($"{text.Name}: the sheet '{OneLine.Of(sheets[at.Value])}' is read, of {names}");
        }

        reader.Reset();
        for (int i = 0; i < at; i++)
        {
            reader.NextResult();
        }
    }

    private static IEnumerable<ListLine> Lines(IExcelDataReader reader)
    {
        int kept = 0;
        for (int number = 1; kept < ListLines.MostRows + 2 && reader.Read(); number++)
        {
            int columns = Math.Min(reader.FieldCount, MostColumns);
            ListLine line = new(number, [.. Enumerable.Range(0, columns).Select(at => WorkbookCell.Text(reader, at).Trim())]);
            if (!line.IsBlank)
            {
                kept++;
                yield return line;
            }
        }
    }
}
