using System.IO.Compression;
using System.Xml;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace FeltNest.Files.Workbooks;

/// <summary>Writes a workbook as XLSX (ECMA-376). No results of formulas are written: the program that opens it works them out. The same
/// sheets give the same bytes.</summary>
internal static class WorkbookWriter
{
    // The first moment a ZIP file can name: a real one would change the bytes.
    private static readonly DateTimeOffset NoMoment = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The file's bytes.</summary>
    public static byte[] Write(IReadOnlyList<WorkbookSheet> sheets)
    {
        using MemoryStream whole = new();
        using (SpreadsheetDocument document = SpreadsheetDocument.Create(whole, SpreadsheetDocumentType.Workbook))
        {
            WorkbookPart book = document.AddWorkbookPart();
            document.ChangeIdOfPart(book, "rId1");
            book.AddNewPart<WorkbookStylesPart>("rId1").Stylesheet = WorkbookStyles.All();
            Sheets named = new();
            for (int i = 0; i < sheets.Count; i++)
            {
                string id = FormattableString.Invariant($"rId{i + 2}");
                WorksheetPart part = book.AddNewPart<WorksheetPart>(id);
                part.Worksheet = Worksheet(sheets[i]);
                named.Append(new Sheet { Name = sheets[i].Name, SheetId = (uint)(i + 1), Id = id });
            }

            book.Workbook = new Workbook(named, new CalculationProperties { FullCalculationOnLoad = true });
        }

        return Undated(whole);
    }

    // The parts again without the moment at which each was made, in the order of their names.
    private static byte[] Undated(MemoryStream whole)
    {
        whole.Position = 0;
        using MemoryStream made = new();
        using (ZipArchive dated = new(whole, ZipArchiveMode.Read))
        using (ZipArchive undated = new(made, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (ZipArchiveEntry entry in dated.Entries.OrderBy(e => e.FullName, StringComparer.Ordinal))
            {
                ZipArchiveEntry copy = undated.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = NoMoment;
                using Stream from = entry.Open();
                using Stream to = copy.Open();
                from.CopyTo(to);
            }
        }

        return made.ToArray();
    }

    private static Worksheet Worksheet(WorkbookSheet sheet)
    {
        SheetData data = new();
        foreach (IGrouping<int, KeyValuePair<(int Row, int Column), WorkbookCell>> row in sheet.Cells.GroupBy(c => c.Key.Row))
        {
            data.Append(
                new Row(row.Select(c => CellOf(c.Key.Row, c.Key.Column, c.Value))) { RowIndex = (uint)row.Key });
        }

        return new Worksheet(new SheetViews(ViewOf(sheet)), Widths(sheet), data);
    }

    private static SheetView ViewOf(WorkbookSheet sheet)
    {
        Pane kept = new()
        {
            HorizontalSplit = sheet.Kept.Columns,
            VerticalSplit = sheet.Kept.Rows,
            TopLeftCell = WorkbookSheet.Address(sheet.Kept.Rows + 1, sheet.Kept.Columns + 1),
            ActivePane = PaneValues.BottomRight,
            State = PaneStateValues.Frozen,
        };
        return new SheetView(kept) { WorkbookViewId = 0 };
    }

    private static Columns Widths(WorkbookSheet sheet) => new(Enumerable.Range(1, sheet.LastColumn).Select(column => new Column
    {
        Min = (uint)column,
        Max = (uint)column,
        Width = sheet.ColumnWidths[Math.Min(column, sheet.ColumnWidths.Count) - 1],
        CustomWidth = true,
    }));

    private static Cell CellOf(int row, int column, WorkbookCell cell)
    {
        Cell made = new() { CellReference = WorkbookSheet.Address(row, column), StyleIndex = (uint)cell.Look };
        switch (cell.Content)
        {
            case CellContent.Text:
                made.DataType = CellValues.InlineString;
                made.InlineString = new InlineString(
                    new Text(string.Concat(cell.Words.Where(c => XmlConvert.IsXmlChar(c) || char.IsSurrogate(c))))
                    {
                        Space = SpaceProcessingModeValues.Preserve,
                    });
                break;
            case CellContent.Number:
                made.CellValue = new CellValue(cell.Words);
                break;
            case CellContent.Formula:
                made.CellFormula = new CellFormula(cell.Words);
                break;
        }

        return made;
    }
}
