using DocumentFormat.OpenXml.Spreadsheet;

namespace FeltNest.Files.Workbooks;

/// <summary>The looks of cells, in the order of <see cref="CellLook"/>.</summary>
internal static class WorkbookStyles
{
    // Built-in format 2 is 0.00; own formats start at 164 (ECMA-376, 18.8.30).
    private const uint Cents = 2;
    private const uint Thousandths = 164;

    // Fills 0 and 1 are fixed by the programs that read them.
    private const uint InputFill = 2;

    /// <summary>All of them.</summary>
    public static Stylesheet All() => new(
        new NumberingFormats(new NumberingFormat { NumberFormatId = Thousandths, FormatCode = "0.000" }),
        new Fonts(new Font(), new Font(new Bold())),
        new Fills(
            new Fill(new PatternFill { PatternType = PatternValues.None }),
            new Fill(new PatternFill { PatternType = PatternValues.Gray125 }),
            new Fill(new PatternFill(new ForegroundColor { Rgb = "FFFFF6D5" }) { PatternType = PatternValues.Solid })),
        new Borders(new Border()),
        new CellStyleFormats(new CellFormat()),
        new CellFormats(Enum.GetValues<CellLook>().Select(Format)));

    private static CellFormat Format(CellLook look)
    {
        CellFormat format = new()
        {
            NumberFormatId = NumberFormat(look),
            ApplyNumberFormat = true,
            FontId = look is CellLook.Heading or CellLook.Total ? 1U : 0U,
            ApplyFont = true,
            FillId = look is CellLook.Input or CellLook.QuotedInput ? InputFill : 0U,
            ApplyFill = true,
        };
        if (look is CellLook.Quoted or CellLook.QuotedInput)
        {
            format.QuotePrefix = true;
        }

        return format;
    }

    private static uint NumberFormat(CellLook look) => look switch
    {
        CellLook.Money or CellLook.Total => Cents,
        CellLook.Quantity => Thousandths,
        _ => 0,
    };
}
